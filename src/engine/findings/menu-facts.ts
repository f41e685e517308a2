import type { AdjustmentReason, BatchReason } from "../model/menu.ts";
import type { Severity } from "./severity.ts";

/** Facts of each finding that portioning, buying and costing can make. */
export type MenuFacts = {
  "dish-unknown": { dish: string; near: string };
  "portions-assumed": { title: string; portions: number };
  "pieces-assumed": { title: string; pieces: number; noun: string };
  /** Guests' names, joined by commas. */
  "swap-missing": { guest: string; need: string; title: string; ingredient: string };
  "need-unknown": { need: string; near: string; guest: string };
  "guests-beyond-covers": { guests: number; covers: number };
  "course-empty": { course: string };
  "dish-for-nobody": { title: string };
  "not-scaled": { name: string };
  "batches-needed": { verb: string; batches: number; because: BatchReason };
  "card-unknown": { name: string };
  "card-used": { name: string; title: string };
  "card-share-assumed": { name: string; title: string; share: number };
  /** `by`: what the rest of the part was multiplied with. */
  "whole-pieces": { title: string; name: string; pieces: number; by: number };
  /** An amount that does not go in step: the dish is made `factor` times over, the line `times` as much as in step. */
  "amount-adjusted": {
    title: string;
    name: string;
    factor: number;
    times: number;
    reason: Exclude<AdjustmentReason, "whole-pieces">;
  };
  "scaled-far": { title: string; factor: number };
  "price-missing": { name: string; grams: number };
  /** Not one price is known; it is told once, in place of each food. */
  "prices-none": { foods: number };
  "pack-weight-assumed": { item: string; grams: number };
  "pack-unit-unknown": { item: string; unit: string; supplier: string; line: number };
  "pack-food-unknown": { item: string; food: string; supplier: string; line: number };
};

/** How grave each finding of the menu and of buying is. */
export const menuSeverity: { readonly [C in keyof MenuFacts]: Severity } = {
  "dish-unknown": "stop",
  "portions-assumed": "warn",
  "pieces-assumed": "note",
  "swap-missing": "warn",
  "need-unknown": "warn",
  "guests-beyond-covers": "warn",
  "course-empty": "warn",
  "dish-for-nobody": "warn",
  "not-scaled": "warn",
  "batches-needed": "note",
  "card-unknown": "warn",
  "card-used": "note",
  "card-share-assumed": "warn",
  "whole-pieces": "note",
  "amount-adjusted": "note",
  "scaled-far": "note",
  "price-missing": "warn",
  "prices-none": "warn",
  "pack-weight-assumed": "note",
  "pack-unit-unknown": "warn",
  "pack-food-unknown": "warn",
};
