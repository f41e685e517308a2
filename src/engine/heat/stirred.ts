import type { Metres, Transfer } from "../measure/heat-units.ts";
import { type Celsius, celsius, type Minutes, minutes } from "../measure/units.ts";
import type { ThermalProperties } from "./thermal-properties.ts";

/** How fast what is stirred, or so small that it is one temperature, goes towards the medium: a share a minute. */
export type Rate = number;

/** h·A/(ρ·V·c) of Newton's law, a minute; the length is volume ÷ surface. Stirring takes the inside resistance away. */
export const rateOf = (
  transfer: Transfer,
  length: Metres,
  properties: Pick<ThermalProperties, "density" | "specificHeat">,
): Rate => (transfer / (properties.density * properties.specificHeat * length)) * 60;

/** The rate at which one temperature was seen to become another in so long; null when the medium explains neither. */
export const rateFrom = (start: Celsius, end: Celsius, medium: Celsius, took: Minutes): Rate | null => {
  const left = (end - medium) / (start - medium);
  return left > 0 && left < 1 && took > 0 ? -Math.log(left) / took : null;
};

/** The temperature after so long. */
export const stirredAfter = (rate: Rate, start: Celsius, medium: Celsius, after: Minutes): Celsius =>
  celsius(medium + (start - medium) * Math.exp(-rate * after));

/** Minutes to a temperature; null when the medium never brings it there. */
export const stirredMinutes = (
  rate: Rate,
  start: Celsius,
  target: Celsius,
  medium: Celsius,
): Minutes | null => {
  if (target === start) return minutes(0);
  const left = (target - medium) / (start - medium);
  if (left >= 1) return minutes(0);
  return left > 0 && rate > 0 ? minutes(-Math.log(left) / rate) : null;
};
