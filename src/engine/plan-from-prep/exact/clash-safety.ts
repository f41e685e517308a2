import type { Lag } from "../../model/prep.ts";

/** Longest wait, minutes, that is ever offered for hot food below 63 °C (England: SI 2013/2996, Schedule 4; from memory). */
export const longestHotWait = 120;

/**
 * True for a side of a lag that food safety may hang on, so that it is never offered for change: keeping cold or raw
 * food, and any stated wait, which may be a thawing, a cooling or a cooking through.
 */
export const isSafety = (lag: Lag, most: boolean): boolean =>
  most ? lag.reason === "fridge-limit" : lag.reason === "stated-wait";
