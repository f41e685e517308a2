import { minutes } from "../measure/units.ts";

/**
 * Figures of work that no card states. All are common practice, no source, unless a source is named;
 * each stands here once, so that a kitchen that differs can be fitted in one place.
 */

/** Waits up to this long stay inside a task; longer ones free the cook. Minutes. */
export const shortWait = 10;
/** A pot on a low heat longer than this is looked at when it starts and ends, and goes alone between. Minutes. */
export const longSimmer = 15;
/** Kilos on one oven shelf: spread on a tray, or in a deep dish. */
export const kilosPerTray = 3;
export const kilosPerDish = 8;
/** Portions on one oven shelf, when the weight says less. */
export const portionsPerShelf = 15;
/** Kilos fried at once in one pan when the menu gives no batches. */
export const kilosPerPan = 1.5;
/** Litres of fridge that a kilo of food in its container takes. */
export const fridgeLitresPerKilo = 1.5;
/** Kilos in one pot when the kitchen lists no pans. */
export const kilosPerPot = 8;
/** Stirring and turning for longer than this is done now and then, and leaves the hands free between. Minutes. */
export const nowAndThen = 20;
export const nowAndThenTechniques: ReadonlySet<string> = new Set(["stir", "turn", "skim", "baste"]);
/** Plating: minutes to lay out the pass, then for each portion by how much is put on the plate. */
export const plateSetUp = 1;
export const plateComponent = 0.2;
export const plateTouch = 0.1;
export const plateMost = 0.7;
/** The least minutes a task on a list should have; shorter work is joined to its neighbour. */
export const leastTask = 4;
/** The most attended minutes joined into one task. */
export const mostTask = 45;

/** The most minutes joined into one task, what goes alone included. */
export const longestTask = 60;
/** Part of a full heating that food needs which is hot already. */
export const stillHot = 0.25;

/** Minutes to slice a kilo of cooked meat: 12 to 20 kilos an hour. */
export const carving = { low: minutes(3), likely: minutes(3.75), high: minutes(5) };
/** Minutes to wring out a kilo of what was soaked or salted, by the handful. */
export const wringing = { low: minutes(2), likely: minutes(3), high: minutes(5) };

/** Nobody stands at one thing for longer than this; words that give it more mean a wait. Minutes. */
export const longestByHand = 120;

/** The longest that an ice is taken out before it is served; what takes longer is thawed. Minutes. */
export const longestSoftening = 45;

/** How long things may wait when the card does not say. Minutes. */
export const waits = {
  /** An ice that was taken out to soften, before the plate. */
  softened: 10,
  /** What soaks for so long by itself is not hurried to the hour, and stands no longer than this in all. */
  longRest: 6 * 60,
  restInAll: 24 * 60,
  /** What simmered for so long, or cooked slowly in the oven, keeps hot in its pot, under the lid, for this long. */
  longCooking: 30,
  slowCooking: 120,
  inItsPot: 90,
  /** Fried and grilled things lose their crispness: a pass window of minutes. */
  fried: 10,
  /** A hot dish, covered, before the plate. */
  hot: 30,
  /** Between two steps of one method while it is hot. */
  inTheFlow: 30,
  /** From the common pot to the part that some guests have differently. */
  fork: 60,
  /** Chilled and covered, until it is finished or plated. */
  fridge: 24 * 60,
  /** Baked and cooled, at room temperature. */
  room: 8 * 60,
  /** Mixed and not yet cooked, on the bench. */
  bench: 4 * 60,
  /** Assembled and not cooked, before the plate. */
  assembled: 2 * 60,
  /** A proved dough. */
  dough: 15,
  /** Stock and other parts made for dishes, in the fridge. */
  component: 48 * 60,
  /** Cut vegetables, covered in the fridge. */
  cut: 24 * 60,
  /** Cut fruit, which browns. */
  cutFruit: 3 * 60,
  /** What is done just before the plate ("to serve"). */
  toServe: 45,
  /** From the stove to where a thing cools by itself. */
  toStand: 10,
  /** From the stove into the ice bath. */
  toCooling: 30,
} as const;
