import type { Severity } from "./severity.ts";

/** Facts of each finding that declaring and safety can make. */
export type DeclarationFacts = {
  "allergen-check-label": { name: string; group: string };
  "nutrition-incomplete": { title: string; missing: string };
  "food-could-hold-anything": { name: string };
  "pregnancy-caution": { name: string; guest: string };
  "limit-broken": { title: string; limit: string };
  "held-too-long": { title: string; minutes: number; most: number };
};

export const declarationSeverity: { readonly [C in keyof DeclarationFacts]: Severity } = {
  "allergen-check-label": "note",
  "nutrition-incomplete": "note",
  "food-could-hold-anything": "warn",
  "pregnancy-caution": "warn",
  "limit-broken": "warn",
  "held-too-long": "warn",
};
