import type { Severity } from "./severity.ts";

/** Facts of each finding that portioning, buying and costing can make. */
export type MenuFacts = {
  "dish-unknown": { dish: string; near: string };
  "portions-assumed": { title: string; portions: number };
  "swap-missing": { guest: string; need: string; title: string; ingredient: string };
  "need-unknown": { need: string; near: string };
  "not-scaled": { name: string };
  "batches-needed": { verb: string; batches: number; because: string };
  "card-unknown": { name: string };
  "price-missing": { name: string; grams: number };
  "pack-unit-unknown": { item: string; unit: string };
  "pack-food-unknown": { item: string; food: string };
};

export const menuSeverity: { readonly [C in keyof MenuFacts]: Severity } = {
  "dish-unknown": "stop",
  "portions-assumed": "warn",
  "swap-missing": "warn",
  "need-unknown": "warn",
  "not-scaled": "warn",
  "batches-needed": "note",
  "card-unknown": "warn",
  "price-missing": "warn",
  "pack-unit-unknown": "warn",
  "pack-food-unknown": "warn",
};
