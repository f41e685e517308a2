import { moment } from "../../measure/units.ts";
import type { Easing } from "../../model/clash.ts";
import { type Least, leastSize } from "./clash-least.ts";
import type { Answer } from "./clash-smallest.ts";

/**
 * Another pair of hands for as short a time as will do: first as late a beginning as possible, then as early an end.
 * Null when not even the whole stretch helps.
 */
export const leastHands = (
  stretch: { readonly from: number; readonly to: number },
  fits: (change: Easing) => Answer,
): Least | null => {
  const hands = (from: number, to: number): Easing => ({ kind: "hands", from: moment(from), to: moment(to) });
  const length = stretch.to - stretch.from;
  if (length < 1) return null;
  const late = leastSize({ most: length, at: (size) => hands(stretch.to - size, stretch.to) }, 1, fits);
  if (!late) return null;
  const from = stretch.to - late.size;
  const short = leastSize({ most: late.size, at: (size) => hands(from, from + size) }, 1, fits);
  if (!short) return late;
  return { ...short, sure: short.sure && late.sure };
};
