import type { FoodId } from "../model/food.ts";

// Common practice, no source. Oils of nuts and seeds are not here: a guest may not have them.
const everyday: ReadonlySet<FoodId> = new Set([
  "water",
  "ice",
  "salt",
  "sea-salt-flakes",
  "smoked-salt",
  "black-pepper",
  "white-pepper",
  "olive-oil",
  "vegetable-oil",
  "sunflower-oil",
  "rapeseed-oil",
  "corn-oil",
]);

/** True for what stands in every kitchen and is often left off a list or out of a method: salt, pepper, water, plain oil. */
export const isEveryday = (food: FoodId | null): boolean => food !== null && everyday.has(food);
