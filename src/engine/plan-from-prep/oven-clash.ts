import type { Model } from "./model.ts";
import { ovenChange } from "./oven-change.ts";

/** Minutes between two uses of one oven that may not share it; 0 when they may. */
export const changeBetween = (model: Model, a: number, b: number): number =>
  Math.abs(a - b) <= model.ovenTolerance ? 0 : Math.max(1, ovenChange(a, b, model.ovenMinutesPer10C));
