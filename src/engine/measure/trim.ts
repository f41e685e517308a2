import { type Estimate, scaleEstimate } from "./estimate.ts";
import type { Grams } from "./units.ts";

// A yield of nothing or less is no yield; what is bought is then taken as eaten whole.
const usable = (yields: number): number => (yields > 0 && Number.isFinite(yields) ? yields : 1);

/** What must be bought for an edible weight: edible portion ÷ yield. Nothing is rounded. */
export const asPurchasedFor = (edible: Estimate<Grams>, yields: number): Estimate<Grams> =>
  scaleEstimate(edible, 1 / usable(yields));

/** What is left to eat of a weight as bought: as purchased × yield. */
export const edibleOf = (asPurchased: Estimate<Grams>, yields: number): Estimate<Grams> =>
  scaleEstimate(asPurchased, usable(yields));
