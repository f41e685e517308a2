import type { Dish } from "../../model/dish.ts";
import type { Placed } from "./dish-graph.ts";

/** Work that is done too early, and how it is known. */
export type OrderCase = {
  /** What a card must speak of for this to be looked for at all. */
  readonly where?: RegExp;
  /** Only where it is done once; a card of several dishes serves each. */
  readonly once?: true;
  /** The two may stand in one step, in this order. */
  readonly sameStep?: true;
  /** What is done too early. */
  readonly late: (p: Placed, dish: Dish) => boolean;
  /** What must stand before it. */
  readonly early: (p: Placed, late: Placed, dish: Dish) => boolean;
  /** True when something before it is enough after all. */
  readonly enough: (p: Placed, dish: Dish) => boolean;
};
