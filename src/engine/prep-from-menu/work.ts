import type { Action, Dish, Step } from "../model/dish.ts";
import type { Technique } from "../model/food.ts";
import type { Batches, Component, Measured, Menu, MenuDish, VesselUse } from "../model/menu.ts";
import type { Segment } from "../model/prep.ts";
import type { Lot } from "./lot.ts";
import type { Timed } from "./timed.ts";

/** What of a dish is made alike: a version as the menu portions it, or a component, which has only one. */
export type Portioned = {
  readonly id: string;
  readonly swaps: readonly number[];
  readonly portions: number;
  readonly factor: number;
  readonly ingredients: readonly Measured[];
};

/** A dish or a component whose work is to be laid out. */
export type Work = {
  readonly dish: Dish;
  /** Its own among all the work: a dish may be served in two courses, or twice in one. */
  readonly key: string;
  readonly course: number;
  readonly versions: readonly Portioned[];
  readonly batches: readonly Batches[];
  /** What each action is done in, as the menu chose it. */
  readonly vessels: readonly VesselUse[];
  /** False for a component, which goes into other dishes and is not plated. */
  readonly plated: boolean;
};

/** How warm a thing is when an action ends, and so how long it may wait; "softening" is on its way out of the freezer. */
export type Warmth = "raw" | "hot" | "fried" | "cold" | "frozen" | "softening" | "room" | "dough";

/** One action for all the versions that do it alike. */
export type Unit = {
  readonly action: Action;
  readonly step: Step;
  readonly technique: Technique | null;
  /** The versions that share it, joined. */
  readonly key: string;
  readonly versions: readonly Portioned[];
  /** How many times the card's own size. */
  readonly factor: number;
  readonly portions: number;
  readonly kilos: number;
  readonly lot: Lot;
  readonly segments: readonly Segment[];
  /** It goes alone for long: chill, prove, cool. */
  readonly wait: boolean;
  /** Shelves of each load in the oven; one load unless the trays are more than one oven takes. */
  readonly loads: readonly number[];
  /** How its length was found; null where it takes none of its own. */
  readonly timed: Timed | null;
  readonly warmth: Warmth;
  /** Places of the units that must be done before. */
  readonly before: readonly number[];
  /** Of these, the ones whose product it takes. */
  readonly takes: readonly number[];
};

/** Dishes and components of a menu as work, components first. */
export const worksOf = (menu: Menu): readonly Work[] => {
  const seen = new Map<string, number>();
  return [...menu.components.map(fromComponent), ...menu.dishes.map(fromDish)].map((work) => {
    const { source } = work.dish;
    const times = (seen.get(source) ?? 0) + 1;
    seen.set(source, times);
    return { ...work, key: times === 1 ? source : `${source}#${times}` };
  });
};

const fromComponent = (component: Component): Omit<Work, "key"> => ({
  dish: component.dish,
  course: component.course,
  versions: [
    {
      id: asWritten,
      swaps: [],
      portions: Math.max(1, Math.round((component.dish.portions?.likely ?? 1) * component.factor)),
      factor: component.factor,
      ingredients: component.ingredients,
    },
  ],
  batches: component.batches,
  vessels: component.vessels,
  plated: false,
});

const fromDish = (menuDish: MenuDish): Omit<Work, "key"> => ({
  dish: menuDish.dish,
  course: menuDish.course,
  versions: menuDish.versions.filter((version) => version.portions > 0),
  batches: menuDish.batches,
  vessels: menuDish.vessels,
  plated: true,
});

/** The id of the version without swaps. */
export const asWritten = "as-written";
