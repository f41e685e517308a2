import { foodById } from "../larder/foods.ts";
import { gradeThrough, withMadeOf } from "../larder/made-of.ts";
import { strongest } from "../larder/strongest.ts";
import type { UnlistedFood } from "../larder/unlisted-foods.ts";
import { compareText } from "../measure/compare-text.ts";
import type { AllergenPath, AllergenStatement } from "../model/declaration.ts";
import type { Dish } from "../model/dish.ts";
import { type AllergenGroup, allergenGroups, type Food } from "../model/food.ts";
import { alternativesOf, type Cards, type Entry } from "./entries.ts";

/** A path with the group it speaks for. */
export type GroupPath = AllergenPath & { readonly group: AllergenGroup };

/**
 * The groups of Annex II found in a version, each with every ingredient it comes from. A food that a line only allows
 * ("or margarine") counts as "check". What is not listed was not found in the words, which promises nothing.
 */
export const stateAllergens = (paths: readonly GroupPath[]): readonly AllergenStatement[] =>
  allergenGroups.flatMap((group) => {
    const own = paths.filter((path) => path.group === group);
    const grade = strongest(own.map((path) => path.grade));
    return grade === null ? [] : [{ group, grade, paths: own.map(({ group: _, ...path }) => path) }];
  });

/** Every way an allergen gets into a version with one of its foods. */
export const allergenPaths = (dish: Dish, entry: Entry, cards: Cards): readonly GroupPath[] => [
  ...pathsOf(entry, entry.food, entry.measured.name),
  ...alternativesOf(dish, entry, cards).flatMap((other) =>
    pathsOf(entry, other.food === null ? null : foodById(other.food), other.name).map(
      (path): GroupPath => ({ ...path, grade: "check" }),
    ),
  ),
];

/** Allergens of foods that only the method names; they are to be asked about, for the list may be right. */
export const unlistedPaths = (unlisted: readonly UnlistedFood[]): readonly GroupPath[] =>
  unlisted.flatMap(({ food, name }) =>
    food.allergens
      .filter((allergen) => allergen.grade !== "check")
      .map((allergen) => ({
        ingredient: null,
        name,
        food: food.id,
        group: allergen.group,
        kind: allergen.kind,
        grade: "check" as const,
        through: [],
      })),
  );

const pathsOf = (entry: Entry, food: Food | null, name: string): readonly GroupPath[] => {
  if (food === null) return [];
  const found = withMadeOf(food).flatMap((held) =>
    held.food.allergens.map(
      (allergen): GroupPath => ({
        ingredient: entry.measured.ingredient,
        name: held.through.length === 0 ? name : held.food.name,
        food: held.food.id,
        group: allergen.group,
        kind: allergen.kind,
        grade: gradeThrough(held, allergen.grade),
        through: [...(entry.card === null ? [] : [entry.card]), ...held.through],
      }),
    ),
  );
  return onePerKind(found);
};

// A compound's own row often repeats what its parts say; the strongest, and of equals the outermost, is kept.
const onePerKind = (paths: readonly GroupPath[]): readonly GroupPath[] => {
  const kept = new Map<string, GroupPath>();
  for (const path of paths) {
    const key = `${path.group} ${path.kind ?? ""}`;
    const other = kept.get(key);
    if (other === undefined || strongest([path.grade, other.grade]) !== other.grade) kept.set(key, path);
  }
  return [...kept.values()];
};

/** Names in the order of the alphabet by code units, each once. */
export const namesOnce = (names: readonly string[]): readonly string[] =>
  [...new Set(names)].sort(compareText);
