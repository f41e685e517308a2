import { findFood, foodById } from "../larder/foods.ts";
import { withMadeOf } from "../larder/made-of.ts";
import { compareText } from "../measure/compare-text.ts";
import { grams } from "../measure/units.ts";
import type { ListedIngredient } from "../model/declaration.ts";
import { type AllergenGroup, allergenGroups, type Food } from "../model/food.ts";
import type { Entry } from "./entries.ts";

type Line = {
  readonly name: string;
  readonly grams: number;
  readonly weighed: boolean;
  readonly madeOf: readonly string[];
  readonly allergens: readonly AllergenGroup[];
};

/**
 * The ingredient list: descending weight as it goes into the bowl (Regulation (EU) 1169/2011, Article 18), equal foods
 * together, a card or compound by its own name followed by what it is made of. `cardGrams` is what a line takes of the
 * card it uses, where that is known; else the foods of the card are weighed. What has no weight stands last. Equal
 * weights stand in the order of their names.
 */
export const listIngredients = (
  entries: readonly Entry[],
  cardGrams: ReadonlyMap<number, number>,
): readonly ListedIngredient[] => {
  const lines = [...own(entries.filter((e) => e.card === null)), ...fromCards(entries, cardGrams)];
  const total = lines.reduce((sum, line) => sum + line.grams, 0);
  return lines
    .sort((a, b) => Number(b.weighed) - Number(a.weighed) || b.grams - a.grams || compareText(a.name, b.name))
    .map(({ weighed: _, ...line }) => ({
      ...line,
      grams: grams(line.grams),
      share: total === 0 ? 0 : line.grams / total,
    }));
};

const weight = (entry: Entry): number => entry.measured.edible?.likely ?? 0;

const nameOf = (entry: Entry): string => entry.food?.name ?? entry.measured.name;

/** Groups to be set off in print: what the food is, or usually is, made with. A label still to be read is not stated here. */
const emphasised = (foods: readonly Food[]): readonly AllergenGroup[] => {
  const held = foods.flatMap((food) => withMadeOf(food)).flatMap(({ food }) => food.allergens);
  return allergenGroups.filter((group) => held.some((a) => a.group === group && a.grade !== "check"));
};

const foodsOf = (entries: readonly Entry[]): readonly Food[] => entries.flatMap((e) => e.food ?? []);

const own = (entries: readonly Entry[]): readonly Line[] =>
  grouped(entries, (e) => e.food?.id ?? `words ${e.measured.name}`).map((same) => ({
    name: same[0] === undefined ? "" : nameOf(same[0]),
    grams: same.reduce((sum, e) => sum + weight(e), 0),
    weighed: same.some((e) => e.measured.edible !== null),
    madeOf: same[0]?.food === null || same[0] === undefined ? [] : partNames(same[0].food),
    allergens: emphasised(foodsOf(same)),
  }));

const fromCards = (entries: readonly Entry[], cardGrams: ReadonlyMap<number, number>): readonly Line[] =>
  grouped(
    entries.filter((e) => e.card !== null),
    (e) => `${e.measured.ingredient} ${e.card}`,
  ).map((parts) => ({
    name: parts[0]?.card ?? "",
    grams: cardGrams.get(parts[0]?.measured.ingredient ?? -1) ?? parts.reduce((sum, e) => sum + weight(e), 0),
    weighed: parts.some((e) => e.measured.edible !== null),
    madeOf: [
      ...new Set(
        [...parts].sort((a, b) => weight(b) - weight(a) || compareText(nameOf(a), nameOf(b))).map(nameOf),
      ),
    ],
    allergens: emphasised(foodsOf(parts)),
  }));

const partNames = (food: Food): readonly string[] =>
  food.madeOf.map((name) => (foodById(name) ?? findFood(name))?.name ?? name);

const grouped = (entries: readonly Entry[], key: (entry: Entry) => string): readonly (readonly Entry[])[] => {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const group = groups.get(key(entry));
    if (group === undefined) groups.set(key(entry), [entry]);
    else group.push(entry);
  }
  return [...groups.values()];
};
