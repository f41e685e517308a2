import type { Estimate } from "../measure/estimate.ts";
import type { Count, Grams, Share } from "../measure/units.ts";
import type { Dish } from "./dish.ts";
import type { FoodId } from "./food.ts";
import type { Sitting } from "./sitting.ts";

/** One ingredient of one version, for all its portions. Rounding comes later, and says so. */
export type Measured = {
  /** Place in the dish's list; null when a swap brought it in. */
  readonly ingredient: number | null;
  readonly food: FoodId | null;
  readonly name: string;
  readonly optional: boolean;
  /** What goes in the pan; null when the card gives no amount that weighs. */
  readonly edible: Estimate<Grams> | null;
  /** What must be bought for it, trim included. */
  readonly asPurchased: Estimate<Grams> | null;
  /** Whole pieces where the card counts them (eggs, leaves, tins); null otherwise. */
  readonly pieces: Estimate<Count> | null;
  /** The measure that the pieces count ("medium", "clove", "tin"); null otherwise. */
  readonly pieceName: string | null;
};

/** A dish as written, or with swaps that some guests need. */
export type Version = {
  /** "as-written", or the swaps' needs joined by "+". */
  readonly id: string;
  /** Swaps applied, places in dish.swaps. */
  readonly swaps: readonly number[];
  /** Names of the guests who get it; the nameless covers get "as-written". */
  readonly guests: readonly string[];
  /** Portions to make, spare included. */
  readonly portions: Count;
  /** Portions ÷ the card's own yield. */
  readonly factor: number;
  readonly ingredients: readonly Measured[];
};

/** How often an action must be done because the vessel holds no more at once. */
export type Batches = {
  readonly action: string;
  readonly version: string;
  readonly batches: Count;
  readonly because: string;
};

export type MenuDish = {
  readonly dish: Dish;
  /** Place in sitting.courses. */
  readonly course: number;
  readonly versions: readonly Version[];
  readonly batches: readonly Batches[];
  /** Guests for whom no version serves, with the need that stands against it. */
  readonly unserved: readonly {
    readonly guest: string;
    readonly need: string;
    readonly ingredients: readonly number[];
  }[];
};

export type Menu = {
  readonly sitting: Sitting;
  readonly dishes: readonly MenuDish[];
  /** Portions made beyond the covers, as a share. */
  readonly spare: Share;
};
