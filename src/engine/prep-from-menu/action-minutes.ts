import { bigPiecesAtSize } from "../larder/big-pieces.ts";
import { handRate } from "../larder/work-rates.ts";
import { addEstimates, type Estimate, scaleEstimate } from "../measure/estimate.ts";
import { celsius, type Minutes, minutes } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import type { Technique } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import { heatingCarried, heatingTime, potsFor, reducingCarried, reducingTime } from "./burner-time.ts";
import { coldTime, icedTime } from "./cold-time.ts";
import { aroundJoint, jointMinutes } from "./joint.ts";
import type { Lot } from "./lot.ts";
import { loadedTime, ovensByShelves } from "./oven-time.ts";
import { type Timed, usually } from "./timed.ts";
import { tinTimes } from "./tin.ts";

/** What the length of an action depends on beside its own words and the amount. */
export type Setting = {
  /** Rounds, one after the other. */
  readonly rounds: number;
  /** Burners it has at once; a part of one where the pots are not all as full as the fullest. */
  readonly burners: number;
  /** Shelves of each load in the oven; empty elsewhere. */
  readonly loads: readonly number[];
};

/** An oven setting when the words give none, °C (common practice, no source: a moderate oven). */
export const moderate = celsius(180);

/**
 * Minutes of an action for this much food. What the card states holds at the card's own size and goes to other sizes by
 * what the technique says it grows with; what it does not state is reckoned from the amount, the kitchen and the
 * technique.
 */
export const actionTime = (
  action: Action,
  technique: Technique | null,
  lot: Lot,
  setting: Setting,
  kitchen: Kitchen,
): Timed => {
  const stated = action.minutes !== null && !action.minutes.assumed ? action.minutes : null;
  const base = stated ?? technique?.minutes ?? action.minutes ?? handful;
  return stated === null
    ? unstated(base, action, technique, lot, setting, kitchen)
    : carried(base, action, technique, lot, setting, kitchen);
};

const handful: Estimate<Minutes> = { low: minutes(1), likely: minutes(2), high: minutes(4) };

/** Words of a simmer that is over when enough has boiled away. */
const reduces = /thick|reduc|coat|syrup|glaz|\bhalf\b|\bthird\b/;

const carried = (
  stated: Estimate<Minutes>,
  action: Action,
  technique: Technique | null,
  lot: Lot,
  { rounds, burners, loads }: Setting,
  kitchen: Kitchen,
): Timed => {
  const setUp = technique?.setUp ?? 0;
  const simmered = action.station === "burner" && reduces.test(action.cue ?? "");
  switch (technique?.grows ?? "none") {
    case "mass":
    case "pieces":
      return usually(growing(stated, setUp, lot.factor));
    case "batches":
      return usually(scaleEstimate(stated, (action.batches ? 1 / action.batches : 1) * rounds));
    case "power":
      return heatingCarried(stated, action, technique, lot, burners, kitchen);
    case "surface":
      return technique && action.station === "burner" && lot.kilos > 0
        ? reducingCarried(stated, lot, technique, burners, kitchen)
        : usually(scaleEstimate(stated, rounds));
    case "thickness":
      return throughPieces(stated, action, technique, lot, rounds, loads, kitchen);
    case "none": {
      if (technique && simmered && action.attention !== "hands" && lot.kilos > 0)
        return reducingCarried(stated, lot, technique, burners, kitchen);
      return usually(scaleEstimate(stated, rounds));
    }
  }
};

/** In the oven, the pot or the cold: by the thickness of a joint or the size of the pot, then by the load of the oven. */
const throughPieces = (
  stated: Estimate<Minutes>,
  action: Action,
  technique: Technique | null,
  lot: Lot,
  rounds: number,
  loads: readonly number[],
  kitchen: Kitchen,
): Timed => {
  if (technique?.id === "cool-quickly") {
    const ratio = lot.wet ? Math.cbrt(lot.factor / potsFor(lot, kitchen)) : 1;
    return { ...usually(scaleEstimate(stated, ratio)), because: "ice-bath", kilos: lot.kilos };
  }
  const joint = jointRatio(action, lot, kitchen);
  const tin = tinTimes(bakedThrough(lot, technique), action.celsius ?? moderate, fanOf(kitchen));
  const length = scaleEstimate(stated, joint.ratio * tin.ratio * rounds);
  const own: Timed = {
    ...usually(length),
    because: joint.ratio * tin.ratio === 1 ? null : "thickness",
    kilos: lot.kilos,
    millimetres: Math.max(joint.millimetres, tin.millimetres),
  };
  if (action.station !== "oven") return own;
  const loaded = loadedTime(length, action.celsius ?? moderate, technique, lot, loads, kitchen);
  return loaded.because === null ? own : { ...loaded, millimetres: own.millimetres };
};

/** An empty case is as thin in any tin. */
const bakedThrough = (lot: Lot, technique: Technique | null): Lot =>
  technique?.id === "bake" ? lot : { ...lot, tins: null, taken: null };

const fanOf = (kitchen: Kitchen): boolean => ovensByShelves(kitchen)[0]?.fan ?? false;

const heatAround = (action: Action, lot: Lot, kitchen: Kitchen) => ({
  contents: lot.contents,
  medium: celsius(
    action.station === "burner" ? Math.min(100, action.celsius ?? 95) : (action.celsius ?? moderate),
  ),
  transfer: aroundJoint(action.station, fanOf(kitchen)),
  core: action.core,
});

const cooksThrough: ReadonlySet<Action["station"]> = new Set(["oven", "burner"]);

const jointRatio = (
  action: Action,
  lot: Lot,
  kitchen: Kitchen,
): { readonly ratio: number; readonly millimetres: number } => {
  if (lot.pieces === null || lot.pieces.counted || lot.factor === 1 || !cooksThrough.has(action.station))
    return { ratio: 1, millimetres: 0 };
  const heat = heatAround(action, lot, kitchen);
  const here = jointMinutes(bigPiecesAtSize(lot.pieces, lot.factor).grams, heat);
  const card = jointMinutes(lot.pieces.grams, heat);
  return here === null || card === null || card.minutes <= 0
    ? { ratio: 1, millimetres: 0 }
    : { ratio: here.minutes / card.minutes, millimetres: here.millimetres };
};

const unstated = (
  base: Estimate<Minutes>,
  action: Action,
  technique: Technique | null,
  lot: Lot,
  { rounds, burners, loads }: Setting,
  kitchen: Kitchen,
): Timed => {
  const setUp = technique?.setUp ?? 0;
  switch (technique?.law ?? "fixed") {
    case "per-kilo":
    case "per-piece":
      return usually(plus(byRate(base, technique, lot, kitchen), setUp));
    case "per-batch": {
      const iced = technique?.id === "cool-quickly" ? icedTime(lot, potsFor(lot, kitchen)) : null;
      return iced ?? usually(plus(scaleEstimate(base, rounds), setUp));
    }
    case "heating":
      return heatingTime(action, technique, lot, burners, kitchen);
    case "fixed": {
      if (technique === null) return usually(handed(base, action, lot, rounds));
      if (technique.id === "reduce" && action.station === "burner" && lot.kilos > 0)
        return reducingTime(lot, technique, burners, kitchen);
      if (action.attention === "none") {
        const cold = coldTime(technique, lot);
        if (cold !== null) return cold;
      }
      if (action.station === "oven") return ovenTime(base, action, technique, lot, loads, kitchen);
      return usually(handed(base, action, lot, rounds));
    }
  }
};

/** A joint in the oven by conduction, anything else in its usual time; then by the load. */
const ovenTime = (
  base: Estimate<Minutes>,
  action: Action,
  technique: Technique,
  lot: Lot,
  loads: readonly number[],
  kitchen: Kitchen,
): Timed => {
  const setting = action.celsius ?? moderate;
  const joint =
    lot.pieces === null || technique.grows !== "thickness" || technique.id === "braise"
      ? null
      : jointMinutes(bigPiecesAtSize(lot.pieces, lot.factor).grams, heatAround(action, lot, kitchen));
  if (joint === null) {
    const tin = tinTimes(bakedThrough(lot, technique), setting, fanOf(kitchen));
    const loaded = loadedTime(scaleEstimate(base, tin.ratio), setting, technique, lot, loads, kitchen);
    const because = loaded.because ?? (tin.ratio === 1 ? null : "thickness");
    return { ...loaded, because, millimetres: tin.millimetres };
  }
  const length = scaleEstimate(around(joint.minutes), 1);
  const loaded = loadedTime(length, setting, technique, lot, loads, kitchen);
  return {
    ...loaded,
    because: loaded.because ?? "thickness",
    kilos: lot.kilos,
    millimetres: joint.millimetres,
  };
};

/** A joint's form and oven are not known to better than a quarter. Common practice, no source. */
const around = (likely: Minutes): Estimate<Minutes> => ({
  low: minutes(likely * 0.75),
  likely,
  high: minutes(likely * 1.35),
});

/** Each food by its own rate; a technique that is fitted to what it is done to keeps the rate it was given. */
const byRate = (
  base: Estimate<Minutes>,
  technique: Technique | null,
  lot: Lot,
  kitchen: Kitchen,
): Estimate<Minutes> => {
  const amount = technique?.law === "per-kilo" ? lot.kilos : lot.portions;
  const all = lot.contents.reduce((sum, { grams }) => sum + grams, 0);
  if (technique === null || !(all > 0)) return scaleEstimate(base, amount);
  return lot.contents
    .map(({ food, grams }) => {
      const rate = handRate(technique, food, kitchen);
      const counted = rate?.per === "kilo" ? lot.kilos : lot.portions;
      return scaleEstimate(rate?.minutes ?? base, (counted * grams) / all);
    })
    .reduce(addEstimates);
};

/** Hands take longer over more food, but not in step with it. */
const handed = (base: Estimate<Minutes>, action: Action, lot: Lot, rounds: number): Estimate<Minutes> =>
  scaleEstimate(base, action.attention === "hands" ? Math.max(1, Math.sqrt(lot.factor)) : rounds);

const plus = (e: Estimate<Minutes>, more: number): Estimate<Minutes> => ({
  low: minutes(e.low + more),
  likely: minutes(e.likely + more),
  high: minutes(e.high + more),
});

/** Only what is beyond the set-up grows with the amount. */
const growing = (stated: Estimate<Minutes>, setUp: number, factor: number): Estimate<Minutes> => {
  const fixed = Math.min(setUp, stated.low);
  return plus(scaleEstimate(plus(stated, -fixed), factor), fixed);
};
