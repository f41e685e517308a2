import type { Celsius, Count, Minor, Minutes, Moment, Share } from "../measure/units.ts";
import type { Food, FoodId, RatePer, TechniqueId } from "./food.ts";
import type { SourceId } from "./span.ts";

/** Whose measures, allergen law and limits are meant. */
export const regions = ["uk", "us", "eu", "au"] as const;
/** One of the regions. */
export type Region = (typeof regions)[number];

/** A row of the need table ("vegetarian", "coeliac", "no-nuts", "pregnant"). */
export type NeedId = string;

/** A guest by name, and what they may not or will not have. */
export type Guest = {
  readonly name: string;
  readonly needs: readonly NeedId[];
};

/** The dishes that are served together, and when. */
export type Course = {
  readonly name: string;
  /** When its last plate should be at the pass. */
  readonly at: Moment;
  /** Cards served in it. */
  readonly dishes: readonly SourceId[];
};

/** A stretch of time [from, to). */
export type Shift = { readonly from: Moment; readonly to: Moment };

/** One pair of hands, and when they are there. */
export type Cook = {
  readonly name: string;
  readonly shifts: readonly Shift[];
};

/** One oven, which holds one temperature at a time. */
export type Oven = {
  readonly name: string;
  /** Trays or shelves it takes at once. */
  readonly shelves: Count;
  readonly fan: boolean;
  readonly kilowatts: number;
};

/** Pans of one size: litres each, and how many. */
export type Pan = {
  readonly name: string;
  readonly litres: number;
  readonly count: Count;
  /** Minutes to wash one up, as this kitchen measured it; absent: the usual ones for its size. */
  readonly washMinutes?: Minutes;
};

/** Containers of one standard size, and how many: litres to the brim, area of the rim. */
export type KitchenContainer = {
  readonly size: string;
  readonly litres: number;
  readonly areaCm2: number;
  readonly count: Count;
  /** Minutes to wash one up; absent: the usual ones. */
  readonly washMinutes?: Minutes;
};

/** Forms of tins: a loaf tin is high and narrow. */
export const tinForms = ["round", "square", "rectangle", "loaf"] as const;
/** One of the forms. */
export type TinForm = (typeof tinForms)[number];

/** Baking tins of one size, and how many: across the floor, in centimetres. */
export type KitchenTin = {
  /** "20 cm round tin". */
  readonly name: string;
  readonly form: TinForm;
  /** The diameter of a round one. */
  readonly wideCm: number;
  readonly longCm: number;
  readonly count: Count;
  /** Minutes to wash one up; absent: the usual ones. */
  readonly washMinutes?: Minutes;
};

/** How fast this crew does a piece of hand work, as it measured itself, beyond laying out and clearing away. */
export type KitchenRate = {
  readonly technique: TechniqueId;
  /** Null when it holds for any food. */
  readonly food: FoodId | null;
  readonly per: RatePer;
  /** Minutes of one pair of hands for one kilo or piece. */
  readonly minutes: Minutes;
};

/** The equipment of a place. */
export type Kitchen = {
  readonly name: string;
  readonly burners: Count;
  /** Each burner's power, kW. */
  readonly burnerKilowatts: number;
  readonly ovens: readonly Oven[];
  readonly grills: Count;
  readonly fryers: Count;
  readonly fridgeLitres: number;
  readonly freezerLitres: number;
  readonly pans: readonly Pan[];
  /** Oven or roasting trays. */
  readonly trays: Count;
  /** Minutes to wash up one tray; absent: the usual ones. */
  readonly trayWashMinutes?: Minutes;
  /** One way from the pass to the table and back, and the plates that go in one; absent: plates are taken at the pass. */
  readonly carry?: { readonly minutes: Minutes; readonly plates: Count };
  /** Gastronorm containers, for deep dishes in the oven and for what is kept. */
  readonly containers: readonly KitchenContainer[];
  /** Baking tins; absent: nothing is known of them, and each card's own are taken to be there. */
  readonly tins?: readonly KitchenTin[];
  /** Mixers, blenders, processors, by name. */
  readonly machines: readonly { readonly name: string; readonly count: Count }[];
  /** Rates that overrule those of the tables; absent when none were measured. */
  readonly rates?: readonly KitchenRate[];
  /** Minutes an oven takes to change by 10 °C. */
  readonly ovenMinutesPer10C: Minutes;
  /** Uses within so many °C may share an oven. */
  readonly ovenTolerance: Celsius;
};

/** One row of a supplier's list. */
export type Pack = {
  readonly supplier: string;
  /** As the supplier names it. */
  readonly item: string;
  /** The food it is, in words that the food table knows. */
  readonly food: string;
  /** What is in the pack: a number and a unit ("g", "kg", "ml", "l", "piece", "bunch"). */
  readonly size: number;
  readonly unit: string;
  readonly price: Minor;
  /** Line of the list it stands on, for findings. */
  readonly line: number;
};

/** One occasion, with times already as moments. */
export type Sitting = {
  readonly source: SourceId;
  readonly title: string;
  /** ISO 8601 date of moment zero. */
  readonly date: string;
  readonly place: string;
  readonly region: Region;
  /** ISO 4217 code. */
  readonly currency: string;
  readonly covers: Count;
  readonly guests: readonly Guest[];
  readonly courses: readonly Course[];
  readonly crew: readonly Cook[];
  readonly kitchen: Kitchen;
  readonly packs: readonly Pack[];
  /** Foods of the cook's own that the table does not have; none when left out. */
  readonly foods?: readonly Food[];
  /** Seconds and spare, as a share of covers (0.05 is one spare in twenty). */
  readonly spare: Share;
  /** So much sooner may hot food be ready than it must, so that a slip has somewhere to go; absent: no spare is placed. */
  readonly spareTime?: Minutes;
  /** Food cost as a share of the net menu price. */
  readonly foodCostTarget: Share;
  /** Tax on the menu price (0.2 is 20 %). */
  readonly taxRate: Share;
};
