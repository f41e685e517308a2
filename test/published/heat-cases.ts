import type { Body } from "../../src/engine/heat/bodies.ts";
import { type Composition, compositionFrom, moistFood } from "../../src/engine/heat/composition.ts";
import { type Exposure, minutesToMiddle } from "../../src/engine/heat/conduction.ts";
import { conductivity, diffusivity, metres, transfer } from "../../src/engine/measure/heat-units.ts";
import { celsius } from "../../src/engine/measure/units.ts";

// Bodies and foods that checks of heat share.
export const cengel = "Çengel, Heat and Mass Transfer";

export const mixed = (parts: Partial<Composition>): Composition => compositionFrom(parts) ?? moistFood;
export const beef = mixed({ water: 0.715, protein: 0.21, fat: 0.06, carbohydrate: 0.005, ash: 0.01 });

export const exposure = (
  body: Body,
  k: number,
  alpha: number,
  h: number,
  start: number,
  medium: number,
): Exposure => ({
  body,
  conductivity: conductivity(k),
  diffusivity: diffusivity(alpha),
  transfer: transfer(h),
  start: celsius(start),
  medium: celsius(medium),
});
export const ball = (diameter: number): Body => ({ kind: "sphere", diameter: metres(diameter) });
export const plate = (thickness: number): Body => ({ kind: "slab", thickness: metres(thickness) });
export const rod = (diameter: number, length: number | null = null): Body => ({
  kind: "cylinder",
  diameter: metres(diameter),
  length: length === null ? null : metres(length),
});
/** Minutes until the middle is at a temperature. */
export const took = (of: Exposure, target: number): number =>
  minutesToMiddle(of, celsius(target)) ?? Number.NaN;
