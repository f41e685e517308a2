import type { Count, Grams, Minor, Share } from "../measure/units.ts";
import type { FoodId, Shelf } from "./food.ts";
import type { Pack } from "./sitting.ts";

/** Where a need comes from: one ingredient of one version of one dish. */
export type Demand = {
  readonly dish: string;
  readonly version: string;
  /** Place in the dish's list; null for what a swap brings in. */
  readonly ingredient: number | null;
  /** As purchased, the likely value of the estimate. Where parts of one food are bought together, its part of them. */
  readonly grams: Grams;
};

/** A part of a food that is left when the whole was bought for another part: the whites of eggs bought for yolks. */
export type PartOver = { readonly part: string; readonly grams: Grams };

/** So many of one pack. */
export type PackCount = { readonly pack: Pack; readonly count: Count };

/** One food to buy for the whole menu, as purchased: grams needed, packs, and what is left of them. */
export type PurchaseLine = {
  readonly food: FoodId | null;
  readonly name: string;
  readonly shelf: Shelf;
  /** The sum of the demands. */
  readonly needed: Grams;
  /** What would be needed if every estimate turned out at its high end. */
  readonly most: Grams;
  readonly demands: readonly Demand[];
  /** What to buy; empty when no list has it. */
  readonly packs: readonly PackCount[];
  readonly bought: Grams;
  readonly leftOver: Grams;
  readonly cost: Minor;
  /** The one that most of the cost goes to; null when nothing on the lists fits. */
  readonly supplier: string | null;
  readonly partsOver: readonly PartOver[];
  /** Not bought: water from the tap, or on hand. */
  readonly free: boolean;
};

/** One list for the whole menu. Invariant: bought ≥ needed on every line with packs. */
export type Purchase = {
  readonly lines: readonly PurchaseLine[];
  readonly suppliers: readonly { readonly name: string; readonly lines: Count; readonly total: Minor }[];
  readonly total: Minor;
};

/** What one dish uses, in minor units of the currency, all its versions together. */
export type DishCost = {
  readonly dish: string;
  /** Food used, at the price of the packs it comes from. */
  readonly used: Minor;
  readonly perPortion: Minor;
  readonly portions: Count;
  /** Ingredients with no price. */
  readonly unpriced: readonly string[];
};

/** What the menu costs and the price that meets the target, in minor units of the currency. */
export type Cost = {
  readonly currency: string;
  readonly dishes: readonly DishCost[];
  /** Sum over the dishes of what is used. */
  readonly used: Minor;
  /** Packs bought in full. */
  readonly bought: Minor;
  readonly leftOver: Minor;
  /** Bought ÷ covers: what is left in packs is paid for by the occasion too. */
  readonly perCover: Minor;
  readonly foodCostTarget: Share;
  /** Price of the menu per cover before tax at which `bought` is the target share of the takings. */
  readonly priceNet: Minor;
  /** Tax on one cover, rounded half up. */
  readonly tax: Minor;
  readonly priceGross: Minor;
};
