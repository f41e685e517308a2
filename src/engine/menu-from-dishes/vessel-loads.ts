import { foodById } from "../larder/foods.ts";
import type { Dish, Ingredient } from "../model/dish.ts";

/** What stands in a vessel, for the card's own yield. */
export type Load = { readonly grams: number; readonly litres: number };

const empty: Load = { grams: 0, litres: 0 };

/** A share of a load, or so many times a load. */
export const timesLoad = (load: Load, factor: number): Load => ({
  grams: load.grams * factor,
  litres: load.litres * factor,
});

const loadOf = (ingredient: Ingredient | undefined): Load => {
  const grams = ingredient?.grams?.likely ?? 0;
  const density = ingredient?.food == null ? null : (foodById(ingredient.food)?.density ?? null);
  return { grams, litres: grams / (density !== null && density > 0 ? density : 1) / 1000 };
};

/** What each action handles: its ingredients and what earlier actions made. Uses of later actions count nothing. */
export const loadsOf = (dish: Dish): ReadonlyMap<string, Load> => {
  const byPlace = new Map(dish.ingredients.map((i) => [i.index, i]));
  const loads = new Map<string, Load>();
  for (const step of dish.steps)
    for (const action of step.actions) {
      const parts = action.uses.map((use) =>
        timesLoad(
          use.product === null
            ? loadOf(use.ingredient === null ? undefined : byPlace.get(use.ingredient))
            : (loads.get(use.product) ?? empty),
          use.share,
        ),
      );
      loads.set(
        action.id,
        parts.reduce((a, b) => ({ grams: a.grams + b.grams, litres: a.litres + b.litres }), empty),
      );
    }
  return loads;
};
