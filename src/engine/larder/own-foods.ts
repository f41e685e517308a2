import { grams, share } from "../measure/units.ts";
import {
  allergenGroups,
  type DietFact,
  type Food,
  type FoodAllergen,
  type HazardKind,
  type Nutrients,
  type Piece,
  type Shelf,
} from "../model/food.ts";
import { findFood, nearFoods } from "./foods.ts";
import { withMadeOf } from "./made-of.ts";
import { normaliseName } from "./normalise-name.ts";
import { regularPlural } from "./plural.ts";
import { strongest } from "./strongest.ts";

/** What a cook states of a food that the table does not have. */
export type OwnFoodFacts = {
  readonly name: string;
  readonly plural: string | null;
  readonly otherNames: readonly string[];
  readonly shelf: Shelf;
  /** Grams a millilitre; null when not stated. */
  readonly density: number | null;
  /** Edible grams of each kind of piece; the first is what a bare count means. */
  readonly pieces: readonly { readonly name: string; readonly grams: number }[];
  /** Edible ÷ as purchased. */
  readonly trim: number;
  /** null when not stated and nothing tells it: every group must then be asked about. Empty when the cook says none. */
  readonly allergens: readonly FoodAllergen[] | null;
  /** null when it is to follow from what the food is made of. */
  readonly diet: readonly DietFact[] | null;
  readonly hazards: readonly HazardKind[];
  readonly fridgeDays: number | null;
  /** Names of foods of the table, or of own foods before this one. */
  readonly madeOf: readonly string[];
  readonly nutrients: Nutrients;
  /** Who states it, and from where, in the cook's words; null when that is not told. */
  readonly toldBy?: string | null;
};

/** What keeps a list of own foods from being used. `food` is its place in the list. */
export type OwnFoodTrouble =
  | { readonly kind: "name-taken"; readonly food: number; readonly name: string; readonly by: string }
  | {
      readonly kind: "part-unknown";
      readonly food: number;
      readonly part: number;
      readonly name: string;
      readonly near: string;
    };

const unstated = "allergens not stated";

/** True of an own food of which nobody has said what allergens it holds. */
export const allergensUnstated = (food: Food): boolean => food.source === "own" && food.note === unstated;

const told = "stated by ";

/** What a cook stated of a food of their own, and who did; null for a food of the table, and where nobody has said it. */
export const statedOf = (
  food: Food,
): { readonly by: string; readonly allergens: readonly FoodAllergen[] } | null =>
  food.source !== "own" || allergensUnstated(food)
    ? null
    : { by: food.note.startsWith(told) ? food.note.slice(told.length) : "", allergens: food.allergens };

// Nothing was said, so each group is to be asked about: silence is not taken for "none".
const askAll: readonly FoodAllergen[] = allergenGroups.map((group) => ({
  group,
  kind: null,
  grade: "check",
}));

const allergensOf = (parts: readonly Food[]): readonly FoodAllergen[] => {
  const held = parts.flatMap((part) => withMadeOf(part)).flatMap(({ food }) => food.allergens);
  const keys = [...new Set(held.map((a) => `${a.group}|${a.kind ?? ""}`))];
  return keys.flatMap((key): readonly FoodAllergen[] => {
    const same = held.filter((a) => `${a.group}|${a.kind ?? ""}` === key);
    const grade = strongest(same.map((a) => a.grade));
    const [first] = same;
    return first === undefined || grade === null ? [] : [{ ...first, grade }];
  });
};

const made = (facts: OwnFoodFacts, parts: readonly Food[]): Food => {
  const plural = facts.plural ?? regularPlural(facts.name);
  const allergens = facts.allergens ?? (parts.length > 0 ? allergensOf(parts) : askAll);
  return {
    id: `own:${normaliseName(facts.name).replace(/[^\p{L}\p{N}]+/gu, "-")}`,
    name: facts.name,
    plural,
    nameUs: null,
    aliases: facts.otherNames.flatMap((name) => [name.toLowerCase(), regularPlural(name.toLowerCase())]),
    shelf: facts.shelf,
    ndb: null,
    nutrients: facts.nutrients,
    density: facts.density,
    pieces: facts.pieces.map((p): Piece => ({ name: p.name, grams: grams(p.grams) })),
    trim: share(facts.trim),
    allergens,
    diet: facts.diet ?? [...new Set(parts.flatMap((p) => withMadeOf(p)).flatMap(({ food }) => food.diet))],
    hazards: facts.hazards,
    fridgeDays: facts.fridgeDays,
    madeOf: parts.map((part) => part.id),
    note:
      facts.allergens === null && parts.length === 0
        ? unstated
        : facts.toldBy == null
          ? ""
          : `${told}${facts.toldBy}`,
    source: "own",
  };
};

/**
 * Makes foods of what a cook states. A name that the table has is refused: it would hide the table's allergens. A part
 * that no food bears the name of is refused too, for nothing is known of it.
 */
export const ownFoods = (
  list: readonly OwnFoodFacts[],
): { readonly foods: readonly Food[]; readonly trouble: readonly OwnFoodTrouble[] } => {
  const foods: Food[] = [];
  const trouble: OwnFoodTrouble[] = [];
  const byName = new Map<string, Food>();
  list.forEach((facts, at) => {
    for (const name of [facts.name, ...(facts.plural === null ? [] : [facts.plural]), ...facts.otherNames]) {
      const by = byName.get(normaliseName(name)) ?? findFood(name);
      if (by !== null) trouble.push({ kind: "name-taken", food: at, name, by: by.name });
    }
    const parts = facts.madeOf.flatMap((name, part): readonly Food[] => {
      const found = byName.get(normaliseName(name)) ?? findFood(name);
      if (found === null) {
        const near = nearFoods(name, 1)[0]?.name ?? "";
        trouble.push({ kind: "part-unknown", food: at, part, name, near });
      }
      return found === null ? [] : [found];
    });
    const food = made(facts, parts);
    foods.push(food);
    for (const name of [food.name, food.plural, ...food.aliases]) byName.set(normaliseName(name), food);
  });
  return { foods, trouble };
};
