import { foodById } from "../../larder/foods.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import type { HazardKind } from "../../model/food.ts";

const hazardsOf = (i: Ingredient): readonly HazardKind[] =>
  i.food === null ? [] : (foodById(i.food)?.hazards ?? []);

/** Rice by the grain: when cooked, Bacillus cereus grows in it. */
export const isRice = (i: Ingredient): boolean => {
  const food = i.food === null ? null : foodById(i.food);
  return (
    food !== null &&
    (food.hazards.includes("cooked-rice") ||
      (food.shelf === "dry" &&
        /\brice\b/.test(food.name) &&
        !/\b(?:flour|vinegar|noodles?|paper|wine|cakes?|crisps?)\b/.test(food.name)))
  );
};

/** Lines of raw meat, poultry, mince or fish. */
export const rawAnimal = (dish: Dish): readonly Ingredient[] =>
  dish.ingredients.filter((i) =>
    hazardsOf(i).some((h) => /^raw-(?:meat|poultry|mince|fish|shellfish)$/.test(h)),
  );

/** Meat that comes cooked, cured or smoked. */
export const isReadyMeat = (i: Ingredient): boolean =>
  i.state.some((s) => /cooked|smoked|roast/.test(s)) ||
  /\b(cooked|left-?over|smoked|cured|bacon|lardons?|pancetta|guanciale|ham|chorizo|prosciutto|salami|gammon|lobster|crab|(?:nut|walnut|pecan|almond)s? ?meats?)\b/i.test(
    i.text,
  );

/** The line by which a dish keeps badly once it is cooked: rice, meat, fish, stock; null when none does. */
export const keepsBadly = (dish: Dish): Ingredient | null =>
  dish.ingredients.find(isRice) ??
  rawAnimal(dish)[0] ??
  dish.ingredients.find((i) =>
    /\b(?:stock|broth|bones?)\b/.test(i.food === null ? "" : (foodById(i.food)?.name ?? "")),
  ) ??
  null;

/** What salt, acid, sugar or smoke keeps. */
export const isPreserved = (dish: Dish): boolean =>
  /\b(?:cur(?:e|ed|ing)|pickl\w*|smok\w*|confit|brin\w*|salted|dried|jerky|potted|ferment\w*|jam|marmalade|chutney)\b/i.test(
    dish.title,
  );
