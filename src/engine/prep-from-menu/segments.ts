import { tinsAShelf } from "../heat/tins.ts";
import type { TinsTaken } from "../heat/tins-taken.ts";
import { traysOfPieces } from "../heat/trays.ts";
import { type BigPieces, bigPiecesAtSize } from "../larder/big-pieces.ts";
import { type Estimate, exactly, scaleEstimate } from "../measure/estimate.ts";
import { type Celsius, grams, type Minutes, minutes } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import type { Station, Technique } from "../model/food.ts";
import type { Segment, StationUse } from "../model/prep.ts";
import type { Kitchen } from "../model/sitting.ts";
import { actionTime, moderate, type Setting } from "./action-minutes.ts";
import { potsFor, spreadOver } from "./burner-time.ts";
import { machineFor } from "./equipment.ts";
import {
  fridgeLitresPerKilo,
  kilosPerDish,
  kilosPerPan,
  kilosPerTray,
  longestByHand,
  longSimmer,
  nowAndThen,
  nowAndThenTechniques,
  portionsPerShelf,
  shortWait,
} from "./kitchen-rates.ts";
import type { Lot } from "./lot.ts";
import type { Timed } from "./timed.ts";

/** An action as segments, with what was missing for it. */
export type Laid = {
  readonly segments: readonly Segment[];
  readonly wait: boolean;
  /** Shelves of each load in the oven; one load unless the trays are more than one oven takes. */
  readonly loads: readonly number[];
  /** Stations the kitchen does not have. */
  readonly missing: readonly string[];
  /** How its length was found; absent where it takes none of its own. */
  readonly timed?: Timed;
};

/** Not in an oven, or all at once. */
const once: readonly number[] = [1];

/** Lays one action out on hands and stations, for this much food, in this kitchen. */
export const layAction = (action: Action, technique: Technique | null, lot: Lot, kitchen: Kitchen): Laid => {
  if (technique?.id === "preheat") return { segments: [], wait: false, loads: once, missing: [] };
  // How long a thing is stored is how long it keeps, and no work.
  if (technique?.id === "store") {
    return { segments: [byHand(technique.minutes.likely)], wait: false, loads: once, missing: [] };
  }
  switch (action.station) {
    case "oven":
      return onOven(action, technique, lot, kitchen);
    case "burner":
      return onBurner(action, technique, lot, kitchen);
    case "machine":
      return onMachine(action, technique, lot, kitchen);
    case "grill":
    case "fryer":
      return onOne(action.station, action, technique, lot, kitchen);
    case "fridge":
    case "freezer":
    case "ice-bath":
    case "bench":
    case "hands":
      return (
        inMixer(action, technique, lot, kitchen) ?? atRest(action.station, action, technique, lot, kitchen)
      );
  }
};

const plain = (
  length: Estimate<Minutes>,
  attention: Segment["attention"],
  station: Station,
  uses: readonly StationUse[] = [],
): Segment => ({ minutes: length, attention, station, uses });

const useOf = (resource: string, amount = 1, setting: Celsius | null = null): StationUse => ({
  resource,
  amount,
  celsius: setting,
});

const byHand = (length: number): Segment => plain(exactly(minutes(length)), "hands", "hands");

const sized = (
  action: Action,
  technique: Technique | null,
  lot: Lot,
  kitchen: Kitchen,
  setting: Partial<Setting> = {},
): Timed => actionTime(action, technique, lot, { rounds: 1, burners: 1, loads: [], ...setting }, kitchen);

const onOven = (action: Action, technique: Technique | null, lot: Lot, kitchen: Kitchen): Laid => {
  const deep =
    lot.wet || /pan|dish|pot|casserole|tin/.test(action.vessel ?? "") || technique?.id === "braise";
  const loads =
    lot.taken === null ? loadsOf(shelvesFor(lot, deep), kitchen) : loadsOfTins(lot.taken, kitchen);
  const timed = sized(action, technique, lot, kitchen, { loads });
  const handling = Math.max(1, (technique?.handling ?? 2) / 2);
  const first = loads[0];
  const uses = first === undefined ? [] : [useOf("oven", first, action.celsius ?? moderate)];
  return {
    segments: [byHand(handling), plain(timed.minutes, "none", "oven", uses), byHand(handling)],
    wait: false,
    loads: first === undefined ? once : loads,
    missing: first === undefined ? ["oven"] : [],
    timed,
  };
};

const shelvesFor = (lot: Lot, deep: boolean): number =>
  lot.pieces !== null && !deep ? traysWith(lot, lot.pieces) : traysOf(lot, deep);

/** Tins stand beside each other on a shelf; no more of them are in the ovens than there are. */
const loadsOfTins = (taken: TinsTaken, kitchen: Kitchen): readonly number[] => {
  const aShelf = tinsAShelf(taken.tin);
  const has = taken.here?.count ?? Number.POSITIVE_INFINITY;
  if (taken.tins <= has) return loadsOf(Math.ceil(taken.tins / aShelf), kitchen);
  const rounds = Math.ceil(taken.tins / has);
  return Array.from({ length: rounds }, (_, r) =>
    loadsOf(Math.ceil(Math.min(has, taken.tins - r * has) / aShelf), kitchen),
  ).flat();
};

const traysOf = (lot: Lot, deep: boolean): number =>
  Math.max(
    1,
    Math.ceil(lot.kilos / (deep ? kilosPerDish : kilosPerTray)),
    deep ? 1 : Math.ceil(lot.portions / portionsPerShelf),
  );

/** Joints and birds by the floor that each takes, and what lies around them by its weight. */
const traysWith = (lot: Lot, pieces: BigPieces): number => {
  const { grams: each, count } = bigPiecesAtSize(pieces, lot.factor);
  const trays = traysOfPieces(each, count, grams(lot.kilos * 1000), grams(kilosPerTray * 1000));
  return Math.max(1, Math.ceil(trays - 1e-9));
};

/** The loads that so many trays make: each oven filled in turn, the largest first; none without an oven. */
const loadsOf = (trays: number, kitchen: Kitchen): readonly number[] => {
  const ovens = kitchen.ovens.map((oven) => oven.shelves as number).filter((n) => n > 0);
  ovens.sort((a, b) => b - a);
  const loads: number[] = [];
  for (let left = trays, i = 0; left > 0 && ovens.length > 0; i++) {
    const load = Math.min(left, ovens[i % ovens.length] ?? 1);
    loads.push(load);
    left -= load;
  }
  return loads;
};

const onBurner = (action: Action, technique: Technique | null, lot: Lot, kitchen: Kitchen): Laid => {
  const pots = potsFor(lot, kitchen);
  const most = Math.max(1, kitchen.burners);
  const inBatches = technique?.law === "per-batch";
  const batches = inBatches
    ? Math.max(lot.batches ?? Math.ceil(lot.kilos / kilosPerPan), action.batches ?? 1, 1)
    : 1;
  // Two pans go side by side when there is more than one round, as any cook would.
  const burners = Math.min(most, inBatches ? Math.min(2, batches) : Math.max(pots, lot.batches ?? 1));
  const rounds = inBatches
    ? Math.ceil(batches / burners)
    : Math.ceil(Math.max(pots, lot.batches ?? 1) / burners);
  const spread = inBatches ? burners : spreadOver(lot, burners, kitchen);
  const timed = sized(action, technique, lot, kitchen, { rounds, burners: spread });
  const length = timed.minutes;
  const uses = kitchen.burners > 0 ? [useOf("burner", burners)] : [];
  const missing = kitchen.burners > 0 ? [] : ["burner"];
  const alone = action.attention !== "hands" && length.likely > longSimmer;
  const looks = alone
    ? [
        plain(exactly(minutes(5)), "mind", "burner", uses),
        plain(shorten(length, 7), "none", "burner", uses),
        plain(exactly(minutes(2)), "mind", "burner", uses),
      ]
    : [plain(length, action.attention, "burner", uses)];
  return { segments: looks, wait: false, loads: once, missing, timed };
};

const onMachine = (action: Action, technique: Technique | null, lot: Lot, kitchen: Kitchen): Laid => {
  const machine = machineFor(`${action.vessel ?? ""} ${action.verb} ${technique?.id ?? ""}`, kitchen);
  // What hands can do as well is done by hand where there is no machine for it.
  if (machine === null && technique !== null && technique.station !== "machine") {
    return atRest("hands", action, technique, lot, kitchen);
  }
  const length = sized(action, technique, lot, kitchen, { rounds: lot.batches ?? 1 }).minutes;
  const uses = machine === null ? [] : [useOf(machine)];
  const handling = technique?.handling ?? 0;
  const segments =
    action.attention === "none"
      ? [
          byHand(Math.max(1, handling / 2)),
          plain(length, "none", "machine", uses),
          byHand(Math.max(1, handling / 2)),
        ]
      : [plain(length, action.attention, "machine", uses)];
  return {
    segments,
    wait: false,
    loads: once,
    missing: machine === null ? [`machine to ${action.verb}`] : [],
  };
};

/** What pastry a mixer takes at once, kilos, and how long it is with weighing in and turning out. Common practice, no source. */
const kilosInMixer = 6;
const byHandUpTo = 1;
const mixing = { low: minutes(9), likely: minutes(13), high: minutes(21) };

/** Fat is rubbed into more than a kilo in the mixer, bowl by bowl, where there is one and the card gives no time. */
const inMixer = (action: Action, technique: Technique | null, lot: Lot, kitchen: Kitchen): Laid | null => {
  const mixer = kitchen.machines.find(({ name, count }) => count > 0 && /mixer/i.test(name));
  const stated = action.minutes?.assumed === false;
  if (technique?.id !== "rub-in" || mixer === undefined || stated || lot.kilos <= byHandUpTo) return null;
  const length = scaleEstimate(mixing, Math.ceil(lot.kilos / kilosInMixer - 1e-9));
  const segments = [plain(length, "hands", "machine", [useOf(mixer.name)])];
  return { segments, wait: false, loads: once, missing: [] };
};

const onOne = (
  station: "grill" | "fryer",
  action: Action,
  technique: Technique | null,
  lot: Lot,
  kitchen: Kitchen,
): Laid => {
  const has = station === "grill" ? kitchen.grills > 0 : kitchen.fryers > 0;
  const rounds = Math.max(lot.batches ?? Math.ceil(lot.kilos / kilosPerPan), action.batches ?? 1, 1);
  const length = sized(action, technique, lot, kitchen, { rounds }).minutes;
  return {
    segments: [plain(length, action.attention, station, has ? [useOf(station)] : [])],
    wait: false,
    loads: once,
    missing: has ? [] : [station],
  };
};

const atRest = (
  station: Station,
  action: Action,
  technique: Technique | null,
  lot: Lot,
  kitchen: Kitchen,
): Laid => {
  const timed = sized(action, technique, lot, kitchen);
  const length = timed.minutes;
  const stated = action.minutes?.assumed === false ? action.minutes.likely : 0;
  const nowAndAgain = nowAndThenTechniques.has(technique?.id ?? "") && length.likely > nowAndThen;
  if (nowAndAgain || (action.attention === "hands" && stated > longestByHand)) {
    return { segments: [plain(length, "none", station)], wait: true, loads: once, missing: [], timed };
  }
  if (action.attention !== "none") {
    return {
      segments: [plain(length, action.attention, station)],
      wait: false,
      loads: once,
      missing: [],
      timed,
    };
  }
  const litres =
    station === "fridge" ? kitchen.fridgeLitres : station === "freezer" ? kitchen.freezerLitres : 0;
  const cold = station === "fridge" || station === "freezer";
  const amount = Math.min(litres, Math.max(1, Math.ceil(lot.kilos * fridgeLitresPerKilo)));
  const alone = plain(length, "none", station, cold && litres > 0 ? [useOf(station, amount)] : []);
  // Somebody has to be there to put it in, to take it out, or to set down what nothing came before.
  const handled = cold || technique?.id === "take-out" || action.after.length === 0;
  return {
    segments: handled ? [byHand(Math.max(1, technique?.handling ?? 1)), alone] : [alone],
    wait: length.likely > shortWait,
    loads: once,
    missing: cold && litres === 0 ? [station] : [],
    timed,
  };
};

const shorten = (e: Estimate<Minutes>, by: number): Estimate<Minutes> => ({
  low: minutes(Math.max(1, e.low - by)),
  likely: minutes(Math.max(1, e.likely - by)),
  high: minutes(Math.max(1, e.high - by)),
});

/** Neighbouring segments with the same attention and uses become one, so that rounding up to minutes happens once. */
export const joinSegments = (segments: readonly Segment[]): readonly Segment[] => {
  const joined: Segment[] = [];
  for (const segment of segments) {
    const last = joined.at(-1);
    if (last && last.attention === segment.attention && sameUses(last.uses, segment.uses)) {
      joined[joined.length - 1] = { ...last, minutes: sum(last.minutes, segment.minutes) };
    } else if (segment.minutes.high > 0) {
      joined.push(segment);
    }
  }
  return joined;
};

/**
 * One after the other: the means add, and so do the variances, since the one does not run over because the other does.
 * Ranges that were added would say that everything goes wrong at once.
 */
const sum = (a: Estimate<Minutes>, b: Estimate<Minutes>): Estimate<Minutes> => {
  const [low, likely, high] = [a.low + b.low, a.likely + b.likely, a.high + b.high];
  if (high <= low) return exactly(minutes(likely));
  const mean = (low + 4 * likely + high) / 6;
  const share = Math.hypot(a.high - a.low, b.high - b.low) / (high - low);
  const drawn = (n: number): Minutes => minutes(mean + share * (n - mean));
  return { low: drawn(low), likely: drawn(likely), high: drawn(high) };
};

const sameUses = (a: readonly StationUse[], b: readonly StationUse[]): boolean =>
  a.length === b.length &&
  a.every(
    (use, i) =>
      use.resource === b[i]?.resource && use.amount === b[i]?.amount && use.celsius === b[i]?.celsius,
  );
