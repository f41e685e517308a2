import type { Conductivity, Diffusivity, Transfer } from "../measure/heat-units.ts";
import { type Celsius, celsius, type Minutes, minutes, type Share, share } from "../measure/units.ts";
import { type Body, flowsOf, volumeOverSurface } from "./bodies.ts";
import { oneTermFrom, type Series, seriesOf } from "./series.ts";

/** A body of one temperature put into a medium of another, with the coefficient between them. */
export type Exposure = {
  readonly body: Body;
  readonly conductivity: Conductivity;
  readonly diffusivity: Diffusivity;
  readonly transfer: Transfer;
  readonly start: Celsius;
  readonly medium: Celsius;
};

/** How a temperature was found. "lumped": the body is one temperature throughout (Bi ≤ 0.1, within 5 %). */
export type Method = "lumped" | "one-term" | "series";

/** Up to this Biot number (with volume ÷ surface) a body may be taken as one temperature. */
export const lumpedUpTo = 0.1;

/** Biot number with volume ÷ surface as the length, for the test of the lumped model. */
export const lumpedBiot = ({ body, transfer, conductivity }: Exposure): number =>
  (transfer * volumeOverSurface(body)) / conductivity;

type Part = { readonly series: Series; readonly fourierPerSecond: number };

const partsOf = ({ body, transfer, conductivity, diffusivity }: Exposure): readonly Part[] =>
  flowsOf(body).map(({ shape, half }) => ({
    series: seriesOf(shape, (transfer * half) / conductivity),
    fourierPerSecond: diffusivity / (half * half),
  }));

/** What is left of the difference to the medium, at the middle or at the middle of the surface, as a function of seconds. */
const leftOf = (exposure: Exposure, at: "middle" | "surface"): ((seconds: number) => number) => {
  if (lumpedBiot(exposure) <= lumpedUpTo) {
    const { transfer, conductivity, diffusivity, body } = exposure;
    // h / (ρ · c · L) with ρ·c = k/α.
    const rate = (transfer * diffusivity) / (conductivity * volumeOverSurface(body));
    return (seconds) => Math.exp(-rate * seconds);
  }
  const parts = partsOf(exposure);
  return (seconds) =>
    parts.reduce(
      (left, { series, fourierPerSecond }, p) =>
        left * series.left(fourierPerSecond * seconds, at === "surface" && p === 0 ? 1 : 0),
      1,
    );
};

/** How the temperature at this time is found. */
export const methodOf = (exposure: Exposure, after: Minutes): Method => {
  if (lumpedBiot(exposure) <= lumpedUpTo) return "lumped";
  return partsOf(exposure).every((part) => part.fourierPerSecond * after * 60 > oneTermFrom)
    ? "one-term"
    : "series";
};

/** The temperature of the middle, or of the middle of the first surface, after so long. */
export const temperatureAfter = (
  exposure: Exposure,
  after: Minutes,
  at: "middle" | "surface" = "middle",
): Celsius =>
  celsius(exposure.medium + (exposure.start - exposure.medium) * leftOf(exposure, at)(after * 60));

/** The share of all the heat it can take up or give off that has flowed after so long. */
export const heatFlowed = (exposure: Exposure, after: Minutes): Share => {
  if (lumpedBiot(exposure) <= lumpedUpTo) return share(1 - leftOf(exposure, "middle")(after * 60));
  const left = partsOf(exposure).reduce(
    (product, { series, fourierPerSecond }) => product * series.leftOnAverage(fourierPerSecond * after * 60),
    1,
  );
  return share(1 - left);
};

/**
 * Minutes until the middle is at a temperature; null when the medium never brings it there. Constant properties and a
 * constant medium are meant: nothing melts, boils or renders, and the piece does not shrink.
 */
export const minutesToMiddle = (exposure: Exposure, target: Celsius): Minutes | null => {
  const goal = (target - exposure.medium) / (exposure.start - exposure.medium);
  if (!(Number.isFinite(goal) && goal > 0)) return target === exposure.start ? minutes(0) : null;
  if (goal >= 1) return minutes(0);
  const left = leftOf(exposure, "middle");
  let high = 60;
  while (left(high) > goal) {
    high *= 2;
    if (high > 1e10) return null;
  }
  let low = 0;
  for (let i = 0; i < 60; i++) {
    const mid = (low + high) / 2;
    if (left(mid) > goal) low = mid;
    else high = mid;
  }
  return minutes(high / 60);
};
