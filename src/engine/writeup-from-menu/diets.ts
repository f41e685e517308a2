import { againstNeed } from "../larder/against-need.ts";
import { foodById } from "../larder/foods.ts";
import { needById } from "../larder/needs.ts";
import { unlistedFoods } from "../larder/unlisted-foods.ts";
import type { DishDeclaration } from "../model/declaration.ts";
import type { Dish } from "../model/dish.ts";

/**
 * schema.org RestrictedDiet names by the need they stand for. Diets that turn on traces or on certification
 * (GlutenFreeDiet, HalalDiet, KosherDiet) are never claimed.
 */
const claimable = [
  { diet: "VegetarianDiet", need: "vegetarian" },
  { diet: "VeganDiet", need: "vegan" },
] as const;

/** Diets that nothing on the card speaks against; none at all when anything on it is unknown or made from another card. */
export const dietsOf = (dish: Dish, declaration: DishDeclaration): readonly string[] => {
  const foods = dish.ingredients
    .filter((i) => !i.equipment)
    .flatMap((i) => [i.food, ...i.alternatives.map((other) => other.food)])
    .map((id) => (id === null ? null : foodById(id)));
  const named = unlistedFoods(dish).map((unlisted) => unlisted.food);
  const known = foods.filter((food) => food !== null);
  if (foods.length === 0 || known.length < foods.length || declaration.unknown.length > 0) return [];
  if (dish.ingredients.some((i) => i.card !== null)) return [];
  return claimable.flatMap(({ diet, need: id }) => {
    const need = needById(id);
    return need !== null && [...known, ...named].every((food) => againstNeed(food, need) === null)
      ? [diet]
      : [];
  });
};
