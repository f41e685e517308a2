import type { Model } from "./model.ts";
import { ovenChange } from "./oven-change.ts";

/** True when two uses of one oven may share it. */
export const mayShare = (model: Model, a: number, b: number): boolean =>
  Math.abs(a - b) <= model.ovenTolerance;

/** Minutes between two uses of one oven that may not share it, the first at `from` °C. */
export const changeBetween = (model: Model, from: number, to: number): number =>
  ovenChange(from, to, model.ramp);
