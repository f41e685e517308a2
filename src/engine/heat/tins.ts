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
