import type { Estimate } from "../measure/estimate.ts";
import type { Minutes } from "../measure/units.ts";
import type { Attention, Station } from "../model/food.ts";
import type { Chance } from "../search/chance.ts";

/**
 * Coefficients of variation of a length that the words give as one figure, by who does it: hands are the least even,
 * an oven or a fridge keeps time. Common practice, no source.
 */
const ofHands = 0.25;
const ofMinding = 0.2;
const ofHeat = 0.08;
const ofCold = 0.03;

/** How much faster or slower a cook is on one night than on another, in all they do. Common practice, no source. */
const ofCook = 0.1;

const cold: readonly Station[] = ["fridge", "freezer", "ice-bath"];

/** A factor of mean 1 with this coefficient of variation: lognormal, so that work runs over further than it runs short. */
const lognormal = (variation: number, chance: Chance): number => {
  const s2 = Math.log(1 + variation * variation);
  return Math.exp(-s2 / 2 + Math.sqrt(s2) * chance.normal());
};

/** A cook's pace for one night, 1 on the mean. */
export const drawPace = (chance: Chance): number => lognormal(ofCook, chance);

/**
 * The length of a segment on one night. Where there are three figures it is drawn from the beta distribution of PERT over
 * them, with mean (low + 4 × likely + high) / 6 (Malcolm, Roseboom, Clark, Fazar 1959); where the words give one figure,
 * around it by who does the work.
 */
export const drawLength = (
  { low, likely, high }: Estimate<Minutes>,
  attention: Attention,
  station: Station,
  chance: Chance,
): number => {
  if (high <= low) return likely * lognormal(variationOf(attention, station), chance);
  // "At least three hours", left alone, is over when the three hours are.
  if (attention === "none" && likely === low) return likely;
  const share = (likely - low) / (high - low);
  const above = gamma(1 + 4 * share, chance);
  const below = gamma(5 - 4 * share, chance);
  return low + ((high - low) * above) / (above + below);
};

const variationOf = (attention: Attention, station: Station): number => {
  if (attention === "hands") return ofHands;
  if (attention === "mind") return ofMinding;
  return cold.includes(station) ? ofCold : ofHeat;
};

/** A number of the gamma distribution with this shape, from 1 (Marsaglia and Tsang 2000). */
const gamma = (shape: number, chance: Chance): number => {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = chance.normal();
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    if (Math.log(chance.share() + 1e-300) < x * x * 0.5 + d - d * v + d * Math.log(v)) return d * v;
  }
};
