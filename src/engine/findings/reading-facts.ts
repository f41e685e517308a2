import type { Severity } from "./severity.ts";

/** Facts of each finding that reading a card can make. Names are the cook's own words. */
export type ReadingFacts = {
  "text-empty": Record<string, never>;
  "text-not-readable": { reason: "binary" | "too-long"; kept: number };
  "title-missing": { assumed: string };
  "yield-missing": Record<string, never>;
  "method-missing": Record<string, never>;
  "ingredients-missing": Record<string, never>;
  "amount-missing": { name: string };
  "amount-vague": { words: string; likely: number; unit: string };
  "amounts-disagree": { name: string; first: string; second: string };
  "weight-assumed": { name: string; grams: number; basis: string };
  "weight-unknown": { name: string };
  "food-unknown": { name: string; near: string };
  /** A food of the cook's own of which nobody has said what allergens it holds. */
  "allergens-unstated": { name: string };
  /** A food of the cook's own: the groups that were stated, with commas between; `by` is empty when nobody is named. */
  "own-food-stated": { name: string; groups: string; by: string };
  "unit-doubtful": { words: string; taken: string };
  /** `taken` is empty when the figure was left out. */
  "amount-doubtful": { words: string; taken: string };
  "line-not-understood": { words: string };
  "used-not-listed": { name: string; food: string };
  "listed-not-used": { name: string };
  "more-used-than-listed": { name: string; share: number };
  /** `share` is the part of the line that the method takes. */
  "part-unused": { name: string; share: number };
  "time-missing": { verb: string; assumed: number };
  "cue-only-time": { verb: string; cue: string; assumed: number };
  "technique-unknown": { verb: string };
  "temperature-missing": { verb: string };
  "temperature-doubtful": { verb: string; celsius: number; low: number; high: number };
  "temperature-scale-assumed": { words: string; celsius: number };
  /** The words give a fan oven's figure alone; `celsius` is that of an oven without. */
  "fan-setting-raised": { words: string; fan: number; celsius: number };
  /** What spoils was left for hours and no word says where; it is planned in the fridge. */
  "fridge-assumed": { verb: string; minutes: number };
  "ratio-broken": { first: string; second: string; stated: number; found: number };
  "swap-not-understood": { words: string };
  "keeping-not-understood": { words: string };
  "raw-egg": { name: string };
  "core-temperature-missing": { name: string; celsius: number };
  "cooling-missing": { name: string };
  "oven-not-preheated": { celsius: number };
  "rest-missing": { name: string };
  "order-doubtful": { verb: string; before: string };
  "beans-not-boiled": { name: string };
  "raw-flour-eaten": { name: string };
  "thawed-warm": Record<string, never>;
  "poultry-washed": Record<string, never>;
  "marinade-reused": Record<string, never>;
  "garlic-in-oil-kept": { days: number };
  "salt-doubtful": { name: string; share: number };
  "raising-agent-doubtful": { name: string; share: number };
  "yeast-doubtful": { name: string; share: number };
  "gelatine-doubtful": { name: string; share: number };
  "portion-unlikely": { portions: number; grams: number };
  "time-unlikely": { verb: string; minutes: number };
  "interval-unlikely": { verb: string; every: number; minutes: number };
  "meanwhile-alone": Record<string, never>;
  "shellfish-unchecked": { name: string };
  "raw-sprouts": { name: string };
  "raw-milk-used": { name: string };
  "core-too-low": { name: string; celsius: number; needed: number };
  "listed-twice": { name: string };
  "step-repeated": Record<string, never>;
  "settings-disagree": { first: string; second: string };
  "amount-beyond-list": { name: string; stated: string; listed: string };
  "amount-unlikely": { name: string; words: string };
  "component-not-made": { name: string };
  /** Days in the fridge: as the card has them, and the longest that is usual. */
  "kept-too-long": { name: string; days: number; usual: number };
  "reheated-twice": Record<string, never>;
  "hot-in-fridge": Record<string, never>;
  "left-out": { name: string };
  "stuffing-unchecked": { celsius: number };
};

/** How grave each finding of reading is. */
export const readingSeverity: { readonly [C in keyof ReadingFacts]: Severity } = {
  "text-empty": "stop",
  "text-not-readable": "stop",
  "title-missing": "note",
  "yield-missing": "warn",
  "method-missing": "warn",
  "ingredients-missing": "warn",
  "amount-missing": "warn",
  "amount-vague": "note",
  "amounts-disagree": "warn",
  "weight-assumed": "note",
  "weight-unknown": "warn",
  "food-unknown": "warn",
  "allergens-unstated": "warn",
  "own-food-stated": "note",
  "unit-doubtful": "warn",
  "amount-doubtful": "warn",
  "line-not-understood": "warn",
  "used-not-listed": "warn",
  "listed-not-used": "warn",
  "more-used-than-listed": "warn",
  "part-unused": "note",
  "time-missing": "note",
  "cue-only-time": "note",
  "technique-unknown": "note",
  "temperature-missing": "warn",
  "temperature-doubtful": "warn",
  "temperature-scale-assumed": "note",
  "fan-setting-raised": "note",
  "fridge-assumed": "note",
  "ratio-broken": "warn",
  "swap-not-understood": "warn",
  "keeping-not-understood": "note",
  "raw-egg": "warn",
  "core-temperature-missing": "warn",
  "cooling-missing": "warn",
  "oven-not-preheated": "note",
  "rest-missing": "note",
  "order-doubtful": "warn",
  "beans-not-boiled": "warn",
  "raw-flour-eaten": "warn",
  "thawed-warm": "warn",
  "poultry-washed": "warn",
  "marinade-reused": "warn",
  "garlic-in-oil-kept": "warn",
  "salt-doubtful": "warn",
  "raising-agent-doubtful": "warn",
  "yeast-doubtful": "warn",
  "gelatine-doubtful": "warn",
  "portion-unlikely": "warn",
  "time-unlikely": "warn",
  "interval-unlikely": "warn",
  "meanwhile-alone": "note",
  "shellfish-unchecked": "note",
  "raw-sprouts": "warn",
  "raw-milk-used": "warn",
  "core-too-low": "warn",
  "listed-twice": "note",
  "step-repeated": "note",
  "settings-disagree": "warn",
  "amount-beyond-list": "warn",
  "amount-unlikely": "warn",
  "component-not-made": "warn",
  "kept-too-long": "warn",
  "reheated-twice": "warn",
  "hot-in-fridge": "warn",
  "left-out": "warn",
  "stuffing-unchecked": "warn",
};
