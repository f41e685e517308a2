/** Units of heat, each a number that remembers what it counts. Masses stay in grams and times in minutes, as everywhere. */
declare const unit: unique symbol;

/** A length in metres: a thickness, a diameter. */
export type Metres = number & { readonly [unit]: "m" };
/** A surface in square metres. */
export type SquareMetres = number & { readonly [unit]: "m²" };
/** Power in kilowatts. */
export type Kilowatts = number & { readonly [unit]: "kW" };
/** Energy in kilojoules. */
export type Kilojoules = number & { readonly [unit]: "kJ" };
/** Thermal conductivity, W/(m·K). */
export type Conductivity = number & { readonly [unit]: "W/(m·K)" };
/** Specific heat, J/(kg·K). */
export type SpecificHeat = number & { readonly [unit]: "J/(kg·K)" };
/** Density, kg/m³. */
export type Density = number & { readonly [unit]: "kg/m³" };
/** Thermal diffusivity, m²/s. */
export type Diffusivity = number & { readonly [unit]: "m²/s" };
/** Heat-transfer coefficient between a surface and what is around it, W/(m²·K). */
export type Transfer = number & { readonly [unit]: "W/(m²·K)" };

/** So many metres. */
export const metres = (n: number): Metres => n as Metres;
/** So many square metres. */
export const squareMetres = (n: number): SquareMetres => n as SquareMetres;
/** So many kilowatts. */
export const kilowatts = (n: number): Kilowatts => n as Kilowatts;
/** So many kilojoules. */
export const kilojoules = (n: number): Kilojoules => n as Kilojoules;
/** So many W/(m·K). */
export const conductivity = (n: number): Conductivity => n as Conductivity;
/** So many J/(kg·K). */
export const specificHeat = (n: number): SpecificHeat => n as SpecificHeat;
/** So many kg/m³. */
export const density = (n: number): Density => n as Density;
/** So many m²/s. */
export const diffusivity = (n: number): Diffusivity => n as Diffusivity;
/** So many W/(m²·K). */
export const transfer = (n: number): Transfer => n as Transfer;
