import { isCookedThrough } from "../larder/cooked-through.ts";
import { foodById } from "../larder/foods.ts";
import type { Dish } from "../model/dish.ts";
import { type HazardKind, hazardKinds } from "../model/food.ts";

// Said only of what the card does not cook through; the others are said in any case.
const untilCooked: readonly HazardKind[] = [
  "raw-egg",
  "raw-fish",
  "raw-shellfish",
  "raw-flour",
  "raw-milk",
  "soft-cheese",
  "smoked-fish",
  "cured-meat",
  "sprouts",
];

/** Hazards of the foods of a dish that its reader should be told of, each once, in the order of the list of hazards. */
export const cautionsOf = (dish: Dish): readonly HazardKind[] => {
  const found = new Set(
    dish.ingredients.flatMap((ingredient) => {
      const food = ingredient.food === null ? null : foodById(ingredient.food);
      if (food === null) return [];
      const cooked = isCookedThrough(dish, ingredient.index);
      return food.hazards.filter((hazard) => !(cooked && untilCooked.includes(hazard)));
    }),
  );
  return hazardKinds.filter((hazard) => found.has(hazard));
};
