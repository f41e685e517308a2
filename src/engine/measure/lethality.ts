import { type Celsius, type Minutes, minutes } from "./units.ts";

/** What a heat treatment is compared with: so many minutes at a reference, and the °C that change the rate tenfold. */
export type HeatBasis = {
  readonly reference: Celsius;
  readonly minutes: Minutes;
  readonly z: number;
};

/** Minutes at a constant temperature that do what the basis does (Bigelow): t = tref · 10^((Tref − T) / z). */
export const equivalentMinutes = (basis: HeatBasis, celsius: Celsius): Minutes =>
  minutes(basis.minutes * 10 ** ((basis.reference - celsius) / basis.z));
