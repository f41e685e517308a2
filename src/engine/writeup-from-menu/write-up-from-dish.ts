import type { DishDeclaration } from "../model/declaration.ts";
import type { Dish } from "../model/dish.ts";
import type { WriteUp } from "../model/write-up.ts";

/** A dish as a document for print. The declaration is of the dish as written. */
export const writeUpFromDish = (dish: Dish, _declaration: DishDeclaration | null): WriteUp => ({
  title: dish.title,
  portions: dish.portions,
  yieldText: dish.yield?.words.text ?? null,
  handsMinutes: null,
  totalMinutes: null,
  parts: [],
  steps: [],
  keeping: [],
  swaps: [],
  allergens: [],
  cautions: [],
  kilocaloriesPerPortion: null,
  diets: [],
});
