import type { Grams } from "../measure/units.ts";
import type { AllergenGrade, AllergenGroup, FoodId } from "./food.ts";

/** Why an allergen is stated: the ingredient it comes from. */
export type AllergenPath = {
  readonly ingredient: number | null;
  readonly name: string;
  readonly food: FoodId | null;
  readonly kind: string | null;
  readonly grade: AllergenGrade;
  /** Cards and compound foods between the dish and the food, outermost first; empty when it is in the dish itself. */
  readonly through: readonly string[];
};

/** An allergen group that was found in one version of a dish, and each way by which it comes in. */
export type AllergenStatement = {
  readonly group: AllergenGroup;
  /** The strongest grade among the paths. */
  readonly grade: AllergenGrade;
  readonly paths: readonly AllergenPath[];
};

/** A figure with what is not known: a sum over foods of which some have no value. */
export type KnownSum = {
  readonly value: number;
  readonly complete: boolean;
  readonly missing: readonly string[];
};

/** Energy and nutrients of 100 g or of a portion: grams unless the name says otherwise, not yet rounded for a label. */
export type NutritionFacts = {
  readonly kilojoules: KnownSum;
  readonly kilocalories: KnownSum;
  readonly fat: KnownSum;
  readonly saturates: KnownSum;
  /** EU meaning: fibre left out. */
  readonly carbohydrate: KnownSum;
  readonly sugars: KnownSum;
  readonly fibre: KnownSum;
  readonly protein: KnownSum;
  /** Sodium × 2.5, grams. */
  readonly salt: KnownSum;
};

/** One name on an ingredient list: grams as they go in, its share of the whole (0 to 1), and what a compound is made of. */
export type ListedIngredient = {
  readonly name: string;
  readonly grams: Grams;
  readonly share: number;
  readonly madeOf: readonly string[];
  readonly allergens: readonly AllergenGroup[];
};

/** What is stated about one version of one dish. Reckoned from raw weights; a label and local codes decide. */
export type DishDeclaration = {
  readonly dish: string;
  readonly version: string;
  readonly title: string;
  /** EU/UK groups found; a group that is not listed was not found in the words, which promises nothing. */
  readonly allergens: readonly AllergenStatement[];
  /** The nine of the US FALCPA/FASTER acts found, by their US names. */
  readonly allergensUs: readonly {
    readonly name: string;
    readonly grade: AllergenGrade;
    readonly from: readonly string[];
  }[];
  /** Ingredients whose food is not known: they could hold anything. */
  readonly unknown: readonly string[];
  /** In order of weight, most first. */
  readonly ingredients: readonly ListedIngredient[];
  readonly portionGrams: Grams;
  readonly perPortion: NutritionFacts;
  readonly per100g: NutritionFacts;
};

/** May this guest be offered this dish? */
export type GuestVerdict = {
  readonly guest: string;
  readonly dish: string;
  /** The version that serves; null when none does. */
  readonly version: string | null;
  /** yes: nothing found against it. swap: by another version. check: a label or the kitchen must be asked. no: something stands against it. */
  readonly answer: "yes" | "swap" | "check" | "no";
  readonly because: readonly {
    readonly need: string;
    readonly ingredient: number | null;
    readonly name: string;
    readonly grade: AllergenGrade | "unknown";
  }[];
};

/** What is stated of every version that is served, and who may be offered what. */
export type Declaration = {
  readonly dishes: readonly DishDeclaration[];
  readonly grid: readonly GuestVerdict[];
  /** Guests with at least one answer that is not "yes". */
  readonly guestsToSwap: readonly string[];
};
