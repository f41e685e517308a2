import type { Model } from "./model.ts";
import { ovenChange } from "./oven-change.ts";

/** Minutes between two uses of one oven that may not share it, the first at `from` °C; 0 when they may. */
export const changeBetween = (model: Model, from: number, to: number): number =>
  Math.abs(from - to) <= model.ovenTolerance ? 0 : Math.max(1, ovenChange(from, to, model.ramp));
