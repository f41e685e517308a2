import { type Metres, metres, type SquareMetres, squareMetres } from "../measure/heat-units.ts";
import { type Celsius, celsius } from "../measure/units.ts";
import type { Composition } from "./composition.ts";
import { minutesToMiddle } from "./conduction.ts";
import { transferOf } from "./media.ts";
import { thermalProperties } from "./thermal-properties.ts";

/** What a batter or a gratin is baked in. */
export type Tin =
  | { readonly form: "round"; readonly diameter: Metres }
  | { readonly form: "rectangle"; readonly long: Metres; readonly wide: Metres };

/** The floor of a tin. */
export const tinArea = (tin: Tin): SquareMetres =>
  squareMetres(tin.form === "round" ? (Math.PI * tin.diameter ** 2) / 4 : tin.long * tin.wide);

const width = (tin: Tin): number => (tin.form === "round" ? tin.diameter : Math.min(tin.long, tin.wide));
const length = (tin: Tin): number => (tin.form === "round" ? tin.diameter : Math.max(tin.long, tin.wide));

/** Inches and centimetres are rounded: tins that differ by less than this are of one size, metres. Common practice, no source. */
const near = 0.006;

/** True for tins of one form and size. */
export const sameTin = (a: Tin, b: Tin): boolean =>
  a.form === b.form && Math.abs(width(a) - width(b)) < near && Math.abs(length(a) - length(b)) < near;

/** What an oven shelf takes: a tray of GN 1/1, 530 × 325 mm (EN 631-1); and the air between two tins, metres (common practice, no source). */
const shelf = { long: 0.53, wide: 0.325 } as const;
const between = 0.02;

/** How many tins stand beside each other on one shelf of an oven, in rows; never none. */
export const tinsAShelf = (tin: Tin): number => {
  const rows = (long: number, wide: number): number =>
    Math.floor((shelf.long + between) / (long + between)) *
    Math.floor((shelf.wide + between) / (wide + between));
  return Math.max(1, rows(length(tin), width(tin)), rows(width(tin), length(tin)));
};

/** Amounts for other tins at the same depth: by the floor. Times stay as they are. */
export const sameDepthTimes = (from: Tin, to: Tin, howMany = 1): number =>
  (howMany * tinArea(to)) / tinArea(from);

/** How deep so many cubic metres stand in a tin. */
export const depthIn = (cubicMetres: number, tin: Tin): Metres => metres(cubicMetres / tinArea(tin));

/** Out of the mixing bowl, °C, and where the middle of what is baked in a tin is done. Common practice, no source. */
const mixed = celsius(20);
const bakedThrough = celsius(95);

/**
 * What a baking time is multiplied by when the same mix stands deeper or shallower: heat to the middle of a layer that is
 * heated from both faces. Between the depth itself and its square. Nothing rises and no crust forms in it. Null where the
 * oven never bakes it through.
 */
export const deeperTimes = (
  from: Metres,
  to: Metres,
  composition: Composition,
  setting: Celsius,
  fan: boolean,
): number | null => {
  const properties = thermalProperties(composition, celsius(60));
  const at = (thickness: Metres) =>
    minutesToMiddle(
      {
        body: { kind: "slab", thickness },
        ...properties,
        transfer: transferOf(fan ? "fan-oven" : "static-oven").likely,
        start: mixed,
        medium: setting,
      },
      bakedThrough,
    );
  const before = at(from);
  const after = at(to);
  return before === null || after === null || before <= 0 ? null : after / before;
};
