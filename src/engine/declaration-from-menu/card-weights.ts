import { foodById } from "../larder/foods.ts";
import { leftBehind } from "../larder/left-behind.ts";
import type { Dish } from "../model/dish.ts";
import type { Version } from "../model/menu.ts";
import type { Portioned } from "./add-nutrition.ts";
import type { Entry } from "./entries.ts";

/** What each line that uses a card takes of it, in grams for the whole version, where the line's weight is known. */
export const cardWeights = (
  dish: Dish,
  version: Pick<Version, "factor">,
  entries: readonly Entry[],
): ReadonlyMap<number, number> =>
  new Map(
    entries.flatMap(({ card, measured }): [number, number][] => {
      const line = measured.ingredient === null ? undefined : dish.ingredients[measured.ingredient];
      if (card === null || measured.ingredient === null || line === undefined || line.grams === null)
        return [];
      return [[measured.ingredient, line.grams.likely * version.factor]];
    }),
  );

/**
 * What is eaten, for nutrition. A card whose result the food table knows (a stock: its bones and vegetables are
 * strained off) counts as that food, with the weight of the line; any other card counts by its foods.
 */
export const eatenFoods = (
  dish: Dish,
  entries: readonly Entry[],
  cardGrams: ReadonlyMap<number, number>,
): readonly Portioned[] => {
  const asFood = new Map<number, Portioned>();
  for (const [at, grams] of cardGrams) {
    const line = dish.ingredients[at];
    const food = line?.food === null || line === undefined ? null : foodById(line.food);
    if (line !== undefined && food !== null) asFood.set(at, { name: line.name, food, grams });
  }
  return [
    ...entries
      .filter((e) => e.card === null || e.measured.ingredient === null || !asFood.has(e.measured.ingredient))
      .map((e) => ({ name: e.measured.name, food: e.food, grams: eatenGrams(dish, e) })),
    ...asFood.values(),
  ];
};

// What is drained off is not eaten; how much of the frying oil is, the words do not say.
const eatenGrams = (dish: Dish, { card, measured }: Entry): number | null => {
  const left = card === null && measured.ingredient !== null ? leftBehind(dish, measured.ingredient) : "none";
  if (left === "all") return 0;
  return left === "unknown" ? null : (measured.edible?.likely ?? null);
};
