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

const longest = new Map<string, number>();
for (const name of foodByName.keys()) {
  const words = name.split(" ");
  const first = words[0] ?? "";
  longest.set(first, Math.max(longest.get(first) ?? 0, words.length));
}

/**
 * The words with which the names of the table begin, and how many words the longest of those names has: most words begin
 * none or only their own, and need no longer look.
 */
export const firstOfFoodNames: ReadonlyMap<string, number> = longest;

type NearIds = (words: string, most: number) => readonly string[];

type OwnFoods = {
  readonly byId: ReadonlyMap<FoodId, Food>;
  readonly byName: ReadonlyMap<string, FoodId>;
  readonly near: NearIds;
};

const nearIds = nearNames(foodByName);
const indexes = new WeakMap<readonly Food[], OwnFoods>();

const indexOf = (list: readonly Food[]): OwnFoods => {
  const known = indexes.get(list);
  if (known !== undefined) return known;
  const byName = new Map(
    list.flatMap((food) =>
      [food.name, food.plural, ...food.aliases].map((name): [string, FoodId] => [
        normaliseName(name),
        food.id,
      ]),
    ),
  );
  const made = { byId: new Map(list.map((food) => [food.id, food])), byName, near: nearNames(byName) };
  indexes.set(list, made);
  return made;
};

// Set only while withFoods works, and put back before it returns: no caller can see it from outside.
let own: OwnFoods | null = null;

/**
 * Does some work with the cook's own foods beside those of the table; without a list, with those of the work around it.
 * The work must end before it returns: what it does later knows the table alone.
 */
export const withFoods = <T>(list: readonly Food[] | undefined, work: () => T): T => {
  if (list === undefined) return work();
  const before = own;
  own = list.length === 0 ? null : indexOf(list);
  try {
    return work();
  } finally {
    own = before;
  }
};

/** True while a cook's own foods stand beside the table. */
export const hasOwnFoods = (): boolean => own !== null;

/** The food of an id; null when neither the table nor the cook has it. */
export const foodById = (id: FoodId): Food | null => byId.get(id) ?? own?.byId.get(id) ?? null;

/** The food that bears this very name, normalised; null when none does. */
export const foodOfKey = (key: string): Food | null => {
  const id = foodByName.get(key) ?? own?.byName.get(key);
  return id === undefined ? null : foodById(id);
};

/** The food that the whole of these words names, whatever their case, accents or number; null when none does. */
export const findFood = (words: string): Food | null => {
  const key = normaliseName(words);
  const exact = foodOfKey(key);
  if (exact !== null) return exact;
  for (const form of singularsOf(key)) {
    const food = foodOfKey(form);
    if (food !== null) return food;
  }
  return foodOfKey(regularPlural(key));
};

/** Foods whose names look like these words, likest first, at most `most`; empty when nothing is half alike. */
export const nearFoods = (words: string, most: number): readonly Food[] => {
  const ids = [...(own?.near(words, most) ?? []), ...nearIds(words, most)];
  return ids.slice(0, most).flatMap((id) => foodById(id) ?? []);
};
