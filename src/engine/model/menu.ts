import type { Estimate } from "../measure/estimate.ts";
import type { Count, Grams, Share } from "../measure/units.ts";
import type { Dish } from "./dish.ts";
import type { FoodId } from "./food.ts";
import type { Sitting } from "./sitting.ts";
import type { SourceId } from "./span.ts";

/** What makes an amount other than the card's times the factor. */
export type AdjustmentReason =
  /** Eggs, leaves and tins come whole, and the rest of their part was brought into step. */
  | "whole-pieces"
  /** A bigger pot loses less of its liquid to the air, a small one more. */
  | "boils-away"
  /** Strong flavours are held back in large amounts. */
  | "spice"
  /** A large dough ferments faster. */
  | "yeast"
  /** Raising powders are held back in large amounts. */
  | "raising-agent"
  /** It films a pan, whose surface grows less than what it holds. */
  | "pan-surface"
  /** One panful to fry in, and what the food takes up. */
  | "panful"
  /** Cooking water that is used again for the next batch, with what is in it. */
  | "bath"
  /** It covers what lies in it: the gaps between are in step, what stands over it goes by the vessel. */
  | "covers"
  /** It thickens what is left of a liquid of which a big pot loses less. */
  | "liquid-left"
  /** Each tin is greased whole. */
  | "tins";

/** Why an amount is not the card's × the version's factor: it was multiplied by this as well. */
export type Adjustment = { readonly reason: AdjustmentReason; readonly factor: number };

/** One ingredient of one version, for all its portions. Rounding comes later, and says so. */
export type Measured = {
  /** Place in the dish's list; null when a swap brought it in. */
  readonly ingredient: number | null;
  /**
   * The component whose card brings it in, when the line uses one ("1 quantity of brown stock"): `ingredient` is then
   * the line of the dish, and these are its foods as they go into the component. Null for a food of the dish itself.
   */
  readonly card: SourceId | null;
  /** Place in the component's own list; null when `card` is null. */
  readonly cardIngredient: number | null;
  readonly food: FoodId | null;
  readonly name: string;
  /** A part of the food alone: "yolk", "white", "juice", "zest"; null for the whole. */
  readonly portion: string | null;
  readonly optional: boolean;
  /** What goes in the pan; null when the card gives no amount that weighs. */
  readonly edible: Estimate<Grams> | null;
  /** What must be bought for it, trim included; for a part of a food, the whole foods it is taken from. */
  readonly asPurchased: Estimate<Grams> | null;
  /** Whole pieces where the card counts them (eggs, leaves, tins); null otherwise. */
  readonly pieces: Estimate<Count> | null;
  /** The measure that the pieces count ("medium", "clove", "tin"); null otherwise. */
  readonly pieceName: string | null;
  /** All that was multiplied in beside the factor; empty for most. The amounts have it in them. */
  readonly adjusted: readonly Adjustment[];
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

/** What sets the number of batches: the card's own words, the pan's litres, the trays and shelves there are, or hot fat. */
export type BatchReason = "card-says" | "pan-volume" | "oven-shelves" | "frying-fat";

/** How often an action must be done because the vessel holds no more at once. */
export type Batches = {
  readonly action: string;
  readonly version: string;
  readonly batches: Count;
  readonly because: BatchReason;
};

/** What an action is done in, chosen from the kitchen: the smallest that holds it at a working fill, or the largest in turns. */
export type VesselUse = {
  readonly action: string;
  readonly version: string;
  readonly kind: "pan" | "tray" | "container";
  /** As the kitchen names it. */
  readonly name: string;
  /** What goes in, all batches together. */
  readonly grams: Grams;
  readonly litres: number;
  /** What one holds at a working fill: litres for pans and containers, grams for trays. */
  readonly holds: number;
  /** How many fillings it takes. */
  readonly fillings: Count;
  /** How full the fullest filling is, of what one holds. */
  readonly fill: Share;
};

/** A dish in a course, in each version that some guest gets. */
export type MenuDish = {
  readonly dish: Dish;
  /** Place in sitting.courses. */
  readonly course: number;
  readonly versions: readonly Version[];
  readonly batches: readonly Batches[];
  readonly vessels: readonly VesselUse[];
  /** Guests for whom no version serves, with the need that stands against it. */
  readonly unserved: readonly {
    readonly guest: string;
    readonly need: string;
    readonly ingredients: readonly number[];
  }[];
};

/**
 * A card that other dishes use ("1 quantity of brown stock"), made once for all of them. Its foods already stand in
 * the versions that use it, so that buying and costing leave components out; the work and the pans need them.
 */
export type Component = {
  readonly dish: Dish;
  /** The earliest course that uses it, a place in sitting.courses. */
  readonly course: number;
  /** How many times its card is made, all uses together. */
  readonly factor: number;
  readonly ingredients: readonly Measured[];
  readonly batches: readonly Batches[];
  readonly vessels: readonly VesselUse[];
  readonly usedBy: readonly {
    /** A dish of the menu, or another component. */
    readonly dish: SourceId;
    /** The version that uses it; null when a component does. */
    readonly version: string | null;
    /** Place in the user's list; null when a swap brings it in. */
    readonly ingredient: number | null;
    /** How many times its card this use takes. */
    readonly factor: number;
  }[];
};

/** The dishes of a sitting in real amounts. */
export type Menu = {
  readonly sitting: Sitting;
  readonly dishes: readonly MenuDish[];
  /** Cards that the dishes use, each before those that use it. */
  readonly components: readonly Component[];
  /** Portions made beyond the covers, as a share. */
  readonly spare: Share;
};
