import { foodById } from "../larder/foods.ts";
import type { Dish } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { boiledAway, potsOf } from "./boiled-away.ts";
import { isSimmer, type Loads, loadsOf, simmeredAway } from "./vessel-loads.ts";

/** Flour up to this share of a pot thickens it; more makes a dough or a batter. */
const mostFlour = 0.1;
const starches = /^(?:cornflour|cornstarch|arrowroot|potato-starch|tapioca-starch|rice-flour)$/;
const flours = /(^|-)flour(-|$)/;
/** Never more of a pot than this is taken to boil away, nor in a small one this many times the card's. */
const mostGone = 0.5;
const mostOften = 3;

/** A line of starch or flour, and the pot that it thickens, at the card's size. */
export type Thickened = {
  readonly line: number;
  readonly grams: number;
  /** What boils away of it. */
  readonly gone: number;
  readonly litres: number;
};

const heaviest = (dish: Dish, loads: Loads, line: number): number =>
  Math.max(
    0,
    ...[...loads.values()]
      .filter(({ contents }) => [...contents.values()].some((c) => c.ingredient === line))
      .map(({ contents }) =>
        [...contents.values()].reduce(
          (sum, c) => sum + (dish.ingredients[c.ingredient]?.grams?.likely ?? 0) * c.share,
          0,
        ),
      ),
  );

/**
 * Thickeners whose pot loses water that nothing makes good: milk, wine, cream. Where water or stock is on the card, that
 * is changed instead, so that what is left is in step, and the starch with it.
 */
export const thickenedBy = (dish: Dish): readonly Thickened[] => {
  const lines = dish.ingredients.filter(
    ({ food }) => food !== null && (starches.test(food) || flours.test(food)),
  );
  if (lines.length === 0 || boiledAway(dish) !== null) return [];
  const loads = loadsOf(dish);
  return lines.flatMap(({ index, food, grams }): readonly Thickened[] => {
    const all = heaviest(dish, loads, index);
    const share = all > 0 ? (grams?.likely ?? 0) / all : 1;
    if (food === null || foodById(food) === null || share > mostFlour) return [];
    let gone = 0;
    let litres = 0;
    for (const step of dish.steps)
      for (const action of step.actions) {
        const pot = loads.get(action.id);
        const holds = [...(pot?.contents.values() ?? [])].some((c) => c.ingredient === index);
        if (pot === undefined || !holds || !isSimmer(action)) continue;
        gone += simmeredAway(action, step, pot.litres, 1);
        litres = Math.max(litres, pot.litres);
      }
    return gone > 0 ? [{ line: index, grams: all, gone: Math.min(gone, mostGone * all), litres }] : [];
  });
};

/**
 * What a thickener is multiplied by beside the factor, to be the same share of what is left: a big pot loses less of its
 * liquid than the card's (two-thirds power of what stands in it, and by the pots), a small one more.
 */
export const starchTimes = ({ grams, gone, litres }: Thickened, factor: number, kitchen: Kitchen): number => {
  const pots = potsOf(kitchen);
  const often = Math.min(mostOften, Math.cbrt(pots(litres * factor) / pots(litres) / factor));
  return Math.max(1 - mostGone, (grams - Math.min(gone * often, mostGone * grams)) / (grams - gone));
};
