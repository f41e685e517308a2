import type { Minutes } from "../measure/units.ts";
import type { Station } from "../model/food.ts";
import type { Segment } from "../model/prep.ts";
import type { Chance } from "../search/chance.ts";

/**
 * Coefficients of variation of a length that the words give as one figure, by what ends it. Hands are the least even.
 * What a clock or the heat ends is stated closer: from the oven within a tenth on nineteen nights of twenty, from the
 * stove or a machine within a fifth, whoever stands by; the cold keeps time. Common practice, no source.
 */
const ofHands = 0.25;
const ofMinding = 0.2;
const ofStove = 0.1;
const ofOven = 0.05;
const ofCold = 0.03;

/** How much faster or slower a cook is on one night than on another, in all they do by hand. Common practice, no source. */
const ofCook = 0.1;

const cold: readonly Station[] = ["fridge", "freezer", "ice-bath"];
const stove: readonly Station[] = ["burner", "grill", "fryer", "machine"];

/** True when hands end it and no clock: then a quick cook is done sooner. */
const isPaced = ({ attention, station }: Segment): boolean =>
  attention !== "none" && (station === "hands" || station === "bench");

/** The variance of a length over many nights, a cook's pace included; square minutes. */
export const varianceOf = (segment: Segment): number => {
  const { low, high } = segment.minutes;
  if (high > low) return isOver(segment) ? 0 : ((high - low) / 6) ** 2;
  const likely = segment.usual ?? segment.minutes.likely;
  return (likely * Math.hypot(variationOf(segment), isPaced(segment) ? ofCook : 0)) ** 2;
};

/** "At least three hours", left alone, is over when the three hours are. */
const isOver = ({ minutes, attention, usual }: Segment): boolean =>
  attention === "none" && (usual ?? minutes.likely) === minutes.low;

/** The coefficient of variation of a length that is one figure, without the pace of a cook. */
const variationOf = ({ attention, station }: Segment): number => {
  if (cold.includes(station)) return ofCold;
  if (station === "oven") return ofOven;
  if (stove.includes(station)) return ofStove;
  if (attention === "none") return ofCold;
  return attention === "hands" ? ofHands : ofMinding;
};

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
 * around it by what ends it. The pace of a cook comes on top of a figure; a range has it in it already, so that there
 * the pace takes its part of the range and the rest is drawn.
 */
export const drawLength = (segment: Segment, pace: number, chance: Chance): number => {
  const { low, high } = segment.minutes;
  const likely: Minutes = segment.usual ?? segment.minutes.likely;
  const paced = isPaced(segment) ? pace : 1;
  if (high <= low) return likely * paced * lognormal(variationOf(segment), chance);
  if (isOver(segment)) return likely;
  const share = (likely - low) / (high - low);
  const above = gamma(1 + 4 * share, chance);
  const below = gamma(5 - 4 * share, chance);
  const drawn = low + ((high - low) * above) / (above + below);
  if (paced === 1) return drawn;
  const mean = (low + 4 * likely + high) / 6;
  const ofRange = (high - low) / 6;
  const own = Math.sqrt(Math.max(0, 1 - ((ofCook * mean) / ofRange) ** 2));
  return Math.max(0, mean * paced + own * (drawn - mean));
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
