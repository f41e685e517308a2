import type { Estimate } from "../measure/estimate.ts";
import { type SquareMetres, squareMetres } from "../measure/heat-units.ts";
import { type Celsius, celsius } from "../measure/units.ts";
import { heatOfVaporisation } from "./energy.ts";

/** Pressure of water vapour over water, kPa, 1 to 100 °C: Antoine's equation. */
export const vapourPressure = (at: Celsius): number =>
  (10 ** (8.07131 - 1730.63 / (233.426 + at)) * 101.325) / 760;

/**
 * Water that leaves an open surface below the boil, grams a minute: w = A·(0.089 + 0.0782·v)·(pw − pa)/Y, the pool form
 * of ASHRAE, from memory; the air at 20 °C and half damp, in m/s. ±50 %.
 */
export const openSurfaceLoss = (area: SquareMetres, water: Celsius, wind = 0): number => {
  const air = vapourPressure(celsius(20)) / 2;
  const kilosASecond =
    (area * (0.089 + 0.0782 * wind) * Math.max(0, vapourPressure(water) - air)) / heatOfVaporisation(water);
  return kilosASecond * 60_000;
};

/** What a lid lets through of what an open pan loses. Common practice, no source. */
export const throughLid = { low: 0.05, likely: 0.15, high: 0.3 } as const;

/** What a pan on a simmer (95 °C at the surface) loses, grams a minute: half to half as much again of the pool form. */
export const simmerLoss = (area: SquareMetres, covered: boolean): Estimate<number> => {
  const open = openSurfaceLoss(area, celsius(95));
  const lid = covered ? throughLid : { low: 1, likely: 1, high: 1 };
  return { low: open * 0.5 * lid.low, likely: open * lid.likely, high: open * 1.5 * lid.high };
};

/** The surface of what stands in a pot as wide as the food is deep twice over: 3 litres in a pan 20 cm across. */
export const potSurface = (litres: number): SquareMetres => {
  const diameter = Math.cbrt((8 * Math.max(0, litres)) / 1000 / Math.PI);
  return squareMetres((Math.PI * diameter * diameter) / 4);
};
