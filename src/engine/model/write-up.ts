import type { Estimate } from "../measure/estimate.ts";
import type { Count, Minutes } from "../measure/units.ts";
import type { AllergenGrade, AllergenGroup, HazardKind } from "./food.ts";

/** One printed ingredient, in the cook's own words. */
export type WriteUpLine = { readonly text: string; readonly optional: boolean };

/** A card as a document: a tree without any mark-up. */
export type WriteUp = {
  readonly title: string;
  readonly portions: Estimate<Count> | null;
  readonly yieldText: string | null;
  /** Hands-on and total minutes, from the steps; null when nothing is known. */
  readonly handsMinutes: Minutes | null;
  readonly totalMinutes: Minutes | null;
  readonly parts: readonly { readonly name: string | null; readonly ingredients: readonly WriteUpLine[] }[];
  readonly steps: readonly {
    readonly part: string | null;
    readonly phase: "method" | "to-serve";
    readonly text: string;
    readonly minutes: Minutes | null;
  }[];
  readonly keeping: readonly string[];
  readonly swaps: readonly string[];
  readonly allergens: readonly {
    readonly group: AllergenGroup;
    readonly grade: AllergenGrade;
    readonly names: readonly string[];
  }[];
  /** Ingredients that were not understood: they could hold anything. */
  readonly unknown: readonly string[];
  /** Hazards of the foods that a reader should be told of, for words to phrase. */
  readonly cautions: readonly HazardKind[];
  readonly kilocaloriesPerPortion: number | null;
  /** schema.org RestrictedDiet names that nothing on the card speaks against; empty when anything is unknown. */
  readonly diets: readonly string[];
};
