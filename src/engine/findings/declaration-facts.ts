import type { LimitQuantity } from "../model/safety.ts";
import type { Severity } from "./severity.ts";

/** Facts of each finding that declaring and safety can make. */
export type DeclarationFacts = {
  "allergen-check-label": { name: string; group: string };
  "nutrition-incomplete": { title: string; missing: string };
  /** Weights are those that go into the bowl: water lost and fat taken up in cooking are left out. */
  "figures-from-raw-weights": { title: string };
  "food-could-hold-anything": { name: string };
  "pregnancy-caution": { name: string; guest: string };
  /** By the words of the card nothing cooks a raw animal food through. */
  "not-cooked-through": { name: string };
  /** The plan does this work for another version, which holds `name`, before it does it for these guests. */
  "made-after-allergen": { title: string; guests: string; verb: string; name: string; either: "yes" | "no" };
  /** Where `celsius` is null, the limit is of time alone; `minutes` is what the plan or the card gives, null for none. */
  "limit-broken": {
    title: string;
    quantity: LimitQuantity;
    celsius: number | null;
    most: number | null;
    minutes: number | null;
  };
  "held-too-long": { title: string; minutes: number; most: number };
};

/** How grave each finding of the declaration is. */
export const declarationSeverity: { readonly [C in keyof DeclarationFacts]: Severity } = {
  "allergen-check-label": "note",
  "nutrition-incomplete": "note",
  "figures-from-raw-weights": "note",
  "food-could-hold-anything": "warn",
  "pregnancy-caution": "warn",
  "not-cooked-through": "warn",
  "made-after-allergen": "warn",
  "limit-broken": "warn",
  "held-too-long": "warn",
};
