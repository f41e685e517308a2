import { type Estimate, scaleEstimate } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import type { Technique } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import { heatingMinutes } from "./heating-minutes.ts";
import { burnerEfficiency, heatingRise, specificHeat } from "./kitchen-rates.ts";

/** What the length of an action depends on beside its own words. */
export type Size = {
  readonly factor: number;
  readonly portions: number;
  readonly kilos: number;
  /** Kilos to be heated from cold; what is hot already counts for a part. */
  readonly coldKilos: number;
  /** Rounds, one after the other. */
  readonly rounds: number;
  /** Burners it has at once. */
  readonly burners: number;
};

/**
 * Minutes of an action for this much food. What the card states holds at the card's own size and grows by the
 * technique's law; what it does not state follows from the technique and the amount.
 */
export const actionMinutes = (
  action: Action,
  technique: Technique | null,
  size: Size,
  kitchen: Kitchen,
): Estimate<Minutes> => {
  const stated = action.minutes !== null && !action.minutes.assumed ? action.minutes : null;
  const base = stated ?? technique?.minutes ?? action.minutes ?? handful;
  const setUp = technique?.setUp ?? 0;
  const law = technique?.law ?? "fixed";
  switch (law) {
    case "fixed": {
      if (stated || action.attention !== "hands") return scaleEstimate(base, size.rounds);
      // Hands take longer over more food, but not in step with it.
      return scaleEstimate(base, Math.max(1, Math.sqrt(size.factor)));
    }
    case "per-kilo":
    case "per-piece": {
      const amount = law === "per-kilo" ? size.kilos : size.portions;
      return stated ? growing(stated, setUp, size.factor) : plus(scaleEstimate(base, amount), setUp);
    }
    case "per-batch": {
      const each = stated && action.batches ? scaleEstimate(stated, 1 / action.batches) : base;
      return plus(scaleEstimate(each, size.rounds), stated ? 0 : setUp);
    }
    case "heating": {
      if (stated) return scaleEstimate(stated, Math.max(1, size.factor / size.burners));
      return heating(size, kitchen);
    }
  }
};

const handful: Estimate<Minutes> = { low: minutes(1), likely: minutes(2), high: minutes(4) };

const plus = (e: Estimate<Minutes>, more: number): Estimate<Minutes> => ({
  low: minutes(e.low + more),
  likely: minutes(e.likely + more),
  high: minutes(e.high + more),
});

/** Only what is beyond the set-up grows with the amount. */
const growing = (stated: Estimate<Minutes>, setUp: number, factor: number): Estimate<Minutes> => {
  const fixed = Math.min(setUp, stated.low);
  return plus(scaleEstimate(plus(stated, -fixed), factor), fixed);
};

const heating = (size: Size, kitchen: Kitchen): Estimate<Minutes> => {
  const kilowatts = Math.max(0.5, kitchen.burnerKilowatts) * size.burners;
  const likely = Math.max(
    1,
    heatingMinutes({
      kilos: size.coldKilos,
      specificHeat,
      rise: heatingRise,
      kilowatts,
      efficiency: burnerEfficiency,
    }),
  );
  return { low: minutes(likely * 0.6), likely: minutes(likely), high: minutes(likely * 1.4) };
};
