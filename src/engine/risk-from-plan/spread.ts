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
 * The length of a segment on one night. Where the words give a range, it is drawn from the triangle over low, likely and
 * high; where they give one figure, around it by who does the work.
 */
export const drawLength = (
  { low, likely, high }: Estimate<Minutes>,
  attention: Attention,
  station: Station,
  chance: Chance,
): number => {
  // "At least three hours", left alone, is over when the three hours are.
  if (attention === "none" && high > low && likely === low) {
    chance.share();
    chance.share();
    return likely;
  }
  // Two numbers are drawn in every case, so that one changed length leaves all other draws as they were.
  if (high <= low)
    return (
      likely *
      lognormal(
        attention === "hands"
          ? ofHands
          : attention === "mind"
            ? ofMinding
            : cold.includes(station)
              ? ofCold
              : ofHeat,
        chance,
      )
    );
  const u = chance.share();
  chance.share();
  const split = (likely - low) / (high - low);
  return u < split
    ? low + Math.sqrt(u * (high - low) * (likely - low))
    : high - Math.sqrt((1 - u) * (high - low) * (high - likely));
};
