import type { Code } from "../../findings/codes.ts";
import type { Finding } from "../../findings/finding.ts";
import type { Dish } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";

/** One thing that the tool can say about a dish that has been read. */
export type Rule = {
  readonly code: Code;
  readonly check: (dish: Dish, region: Region) => readonly Finding[];
};

/** A card that breaks a rule, what is said of it, and the card put right. */
export type Example = {
  readonly card: string;
  /** The words that each finding stands at, in order. */
  readonly says: readonly string[];
  /** The same card without anything for this rule to say. */
  readonly fixed: string;
};
