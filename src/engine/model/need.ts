import type { AllergenGroup, DietFact, FoodId, HazardKind } from "./food.ts";
import type { NeedId } from "./sitting.ts";

/**
 * What a guest may not or will not have. A row never says that something is fit for the guest; it only says what
 * stands against it, or what must be asked.
 */
export type Need = {
  readonly id: NeedId;
  /** As it is printed: "no nuts", "coeliac". */
  readonly name: string;
  /** Other ways of saying it, lower case; what is avoided stands alone ("nuts"), without "no" or "allergy". */
  readonly words: readonly string[];
  /** EU/UK groups that are forbidden. */
  readonly allergens: readonly AllergenGroup[];
  /** What the food may not be or hold. */
  readonly diet: readonly DietFact[];
  /** Hazards usually advised against for this guest. */
  readonly cautions: readonly HazardKind[];
  /** What only the guest, the label or the kitchen can decide: never answered "yes", never "no" by itself. */
  readonly asks: {
    readonly allergens: readonly AllergenGroup[];
    readonly diet: readonly DietFact[];
    readonly cautions: readonly HazardKind[];
    readonly foods: readonly FoodId[];
  };
  /** Facts that may not meet in one dish; empty when there are none. */
  readonly apart: readonly DietFact[];
  readonly note: string;
  /** Row of data/SOURCES.md. */
  readonly source: string;
};
