import { mixtureOf } from "../heat/composition.ts";
import { burnerEfficiency, heatToWarm, minutesToDriveOff, minutesToGive } from "../heat/energy.ts";
import { thermalProperties } from "../heat/thermal-properties.ts";
import { type Estimate, scaleEstimate } from "../measure/estimate.ts";
import { type Kilojoules, type Kilowatts, kilojoules, kilowatts } from "../measure/heat-units.ts";
import { celsius, grams, type Minutes, minutes } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import type { Technique } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import { largestPan } from "./equipment.ts";
import { kilosPerPot } from "./kitchen-rates.ts";
import type { Lot } from "./lot.ts";
import type { Timed } from "./timed.ts";

/** From the tap and the fridge together, °C. */
const cold = celsius(15);
/** Where each heating ends, °C, when the card gives no temperature. Common practice, no source. */
const goals: { readonly [technique: string]: number } = {
  "bring-to-boil": 100,
  "bring-to-simmer": 95,
  reheat: 75,
};
const otherwise = 90;
/** Part of its power that a burner is turned to. Common practice, no source. */
const turned = { low: 0.4, medium: 0.7, high: 1 } as const;
/** A cook takes a second pot when one would be this long in coming to the boil, minutes. Common practice, no source. */
const longestToBoil = 30;

/** Of a burner of which nothing is known, kW. Common practice, no source. */
const usualBurner = 2;

const powerOf = (kitchen: Kitchen, burners: number): Kilowatts =>
  kilowatts((kitchen.burnerKilowatts > 0 ? kitchen.burnerKilowatts : usualBurner) * Math.max(1, burners));

/** Kilos in the pots, water included that no line lists. */
export const kilosInPots = (lot: Lot): number => lot.kilos + lot.water;

/** Kilos that a pot holds, and that one burner boils before a cook takes a second pot. */
const potLimits = (kitchen: Kitchen): { readonly holds: number; readonly boils: number } => {
  const pan = largestPan(kitchen);
  const boils =
    (powerOf(kitchen, 1) * burnerEfficiency.unknown.likely * longestToBoil * 60) / (4 * (100 - cold));
  return { holds: pan === null ? kilosPerPot : pan * 0.8, boils };
};

/** Pots that a cook takes for speed alone: up to half of the burners. */
const mostForSpeed = (kitchen: Kitchen): number => Math.max(1, Math.floor(kitchen.burners / 2));

/**
 * Pots on the stove for so much: as many as hold it, and a second and third one where one would take too long to boil,
 * up to half of the burners.
 */
export const potsFor = (lot: Lot, kitchen: Kitchen): number => {
  // A kitchen without burners is one of which nothing is known: nothing splits the pot.
  if (kitchen.burners < 1) return 1;
  const { holds, boils } = potLimits(kitchen);
  const kilos = kilosInPots(lot);
  const quick = Math.min(Math.ceil(kilos / boils), mostForSpeed(kitchen));
  return Math.max(1, Math.ceil(kilos / holds), quick);
};

/**
 * Over how many burners so much really spreads. The first pot is filled before a second one is taken, and the fullest
 * tells when all are done: more food never boils sooner because it went into one pot more.
 */
export const spreadOver = (lot: Lot, burners: number, kitchen: Kitchen): number => {
  const kilos = kilosInPots(lot);
  // Of a kitchen without burners nothing is known: each usual pot is taken to have its own.
  if (kitchen.burners < 1) return Math.max(burners, kilos / kilosPerPot);
  if (!(kilos > 0)) return burners;
  const { holds, boils } = potLimits(kitchen);
  const fullest = Math.min(kilos, holds, Math.max(boils, kilos / mostForSpeed(kitchen)));
  return Math.min(burners, kilos / fullest);
};

const heatFor = (action: Action, technique: Technique | null, lot: Lot): Kilojoules => {
  const goal = action.celsius ?? goals[technique?.id ?? ""] ?? otherwise;
  const { specificHeat } = thermalProperties(mixtureOf(lot.contents).composition, celsius((cold + goal) / 2));
  const water = thermalProperties(mixtureOf([{ food: "water", grams: 1000 }]).composition, celsius(50));
  const rise = celsius(Math.max(cold, goal));
  return kilojoules(
    heatToWarm(grams(lot.coldKilos * 1000), specificHeat, cold, rise) +
      heatToWarm(grams(lot.water * 1000), water.specificHeat, cold, rise),
  );
};

/** Minutes to heat what is in the pots on so many burners: the best and the worst burner are its ends. */
export const heatingTime = (
  action: Action,
  technique: Technique | null,
  lot: Lot,
  burners: number,
  kitchen: Kitchen,
): Timed => {
  const power = powerOf(kitchen, burners);
  const level = turned[action.heat ?? "high"];
  const heat = heatFor(action, technique, lot);
  const { low, likely, high } = burnerEfficiency.unknown;
  const at = (share: typeof low): Minutes =>
    minutes(Math.max(1, minutesToGive(heat, kilowatts(power * level), share)));
  return {
    minutes: { low: at(high), likely: at(likely), high: at(low) },
    because: "burner-power",
    kilos: kilosInPots(lot),
    kilowatts: power,
    millimetres: 0,
  };
};

/**
 * A stated heating at another size: in step with the mass on each burner, and for more than the card has never below
 * what the best burner of this power could do, nor beyond what the worst one needs: the card may have let it stand, or
 * heated a pan with little in it.
 */
export const heatingCarried = (
  stated: Estimate<Minutes>,
  action: Action,
  technique: Technique | null,
  lot: Lot,
  burners: number,
  kitchen: Kitchen,
): Timed => {
  const found = heatingTime(action, technique, lot, burners, kitchen);
  const most = lot.kilos > 0 ? found.minutes.high : 0;
  const carried = scaleEstimate(stated, lot.factor / burners);
  const least = lot.factor > 1 && lot.kilos > 0 ? found.minutes.low : 0;
  const bounded = {
    low: minutes(Math.min(carried.low, Math.max(stated.low, most))),
    likely: minutes(Math.min(carried.likely, Math.max(stated.likely, most))),
    high: minutes(Math.min(carried.high, Math.max(stated.high, most))),
  };
  return { ...found, minutes: atLeast(bounded, least) };
};

const atLeast = (e: Estimate<Minutes>, least: number): Estimate<Minutes> => ({
  low: minutes(Math.max(e.low, least)),
  likely: minutes(Math.max(e.likely, least)),
  high: minutes(Math.max(e.high, least)),
});

const driveOff = (lot: Lot, technique: Technique, burners: number, kitchen: Kitchen) => {
  const gone = grams(lot.kilos * 1000 * technique.massShare);
  const power = powerOf(kitchen, burners);
  return (share: (typeof burnerEfficiency.unknown)["low"]): Minutes => minutesToDriveOff(gone, power, share);
};

/** Minutes to boil off the technique's usual share, by the power that reaches the pots; never below its usual least. */
export const reducingTime = (lot: Lot, technique: Technique, burners: number, kitchen: Kitchen): Timed => {
  const { low, likely, high } = burnerEfficiency.unknown;
  const off = driveOff(lot, technique, burners, kitchen);
  const floor = technique.minutes;
  return {
    minutes: {
      low: minutes(Math.max(floor.low, off(high))),
      likely: minutes(Math.max(floor.low, off(likely))),
      high: minutes(Math.max(floor.low, off(low))),
    },
    because: "surface",
    kilos: kilosInPots(lot),
    kilowatts: powerOf(kitchen, burners),
    millimetres: 0,
  };
};

/**
 * A stated reduction at another size: what stands in a pot grows faster than its surface, so the time grows with the
 * cube root of what is in each; for more than the card has never below what the best burner could drive off.
 */
export const reducingCarried = (
  stated: Estimate<Minutes>,
  lot: Lot,
  technique: Technique,
  burners: number,
  kitchen: Kitchen,
): Timed => {
  const depth = Math.cbrt(lot.factor / burners);
  const least =
    lot.factor > 1 && technique.grows === "surface"
      ? driveOff(lot, technique, burners, kitchen)(burnerEfficiency.unknown.high)
      : 0;
  return {
    minutes: atLeast(scaleEstimate(stated, lot.factor > 1 ? Math.max(1, depth) : depth), least),
    because: "surface",
    kilos: kilosInPots(lot),
    kilowatts: powerOf(kitchen, burners),
    millimetres: 0,
  };
};
