import type { Action, Step } from "../model/dish.ts";
import type { FoodId } from "../model/food.ts";
import { foodById } from "./foods.ts";
import { isLiquid } from "./liquids.ts";

/** Water to cover a kilo of vegetables in a pot, and that pasta is boiled in, kilos a kilo. Common practice, no source. */
const toCover = 1.2;
const forPasta = 10;

const inWater = new Set([
  "bring-to-boil",
  "bring-to-simmer",
  "boil",
  "parboil",
  "blanch",
  "hard-boil",
  "poach",
  "simmer",
]);
const pasta = /pasta|spaghetti|macaroni|penne|noodle|tagliatelle|linguine|orzo|fusilli/;

/** Kilos of water that the words put food in ("in cold salted water") and no line of the card lists. */
export const unlistedWater = (
  action: Action,
  step: Step,
  contents: readonly { readonly food: FoodId | null; readonly grams: number }[],
): number => {
  if (!inWater.has(action.technique ?? "") || !/\bwater\b/i.test(step.text)) return 0;
  const foods = contents.map(({ food, grams }) => ({ row: food === null ? null : foodById(food), grams }));
  if (foods.some(({ row }) => row !== null && isLiquid(row))) return 0;
  return foods.reduce(
    (sum, { row, grams }) => sum + (grams / 1000) * (row !== null && pasta.test(row.id) ? forPasta : toCover),
    0,
  );
};
