import type { Food, FoodId } from "../model/food.ts";
import { foodFromRow } from "./food-from-row.ts";
import { nearNames } from "./near-names.ts";
import { normaliseName } from "./normalise-name.ts";
import { regularPlural, singularsOf } from "./plural.ts";
import { foodRows } from "./tables/foods.ts";

const rows = foodRows.map(foodFromRow);

/** Every food of the table, in its order. */
export const foods: readonly Food[] = rows.map((row) => row.food);

const byId: ReadonlyMap<FoodId, Food> = new Map(foods.map((food) => [food.id, food]));

/** Every normalised name, plural, US name and alias, and the food it means. No two foods share a name. */
export const foodByName: ReadonlyMap<string, FoodId> = new Map(
  rows.flatMap(({ food, keys }) => keys.map((key): [string, FoodId] => [key, food.id])),
);

/** The food of an id; null when the table has none. */
export const foodById = (id: FoodId): Food | null => byId.get(id) ?? null;

const foodOfKey = (key: string): Food | null => {
  const id = foodByName.get(key);
  return id === undefined ? null : foodById(id);
};

/** The food that the whole of these words names, whatever their case, accents or number; null when none does. */
export const findFood = (words: string): Food | null => {
  const key = normaliseName(words);
  for (const form of [key, ...singularsOf(key), regularPlural(key)]) {
    const food = foodOfKey(form);
    if (food !== null) return food;
  }
  return null;
};

const nearIds = nearNames(foodByName);

/** Foods whose names look like these words, likest first, at most `most`; empty when nothing is half alike. */
export const nearFoods = (words: string, most: number): readonly Food[] =>
  nearIds(words, most).flatMap((id) => foodById(id) ?? []);
