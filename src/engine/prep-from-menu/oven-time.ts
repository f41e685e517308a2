import { mixtureOf } from "../heat/composition.ts";
import { minutesInOven } from "../heat/oven-load.ts";
import { thermalProperties } from "../heat/thermal-properties.ts";
import { type Estimate, scaleEstimate } from "../measure/estimate.ts";
import { kilowatts } from "../measure/heat-units.ts";
import { type Celsius, celsius, type Minutes, minutes, share } from "../measure/units.ts";
import type { Technique } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import type { Lot } from "./lot.ts";
import type { Timed } from "./timed.ts";

/** Part of an oven's power that reaches food and walls; ENERGY STAR commercial ovens v2.2: electric 0.71, gas 0.46. */
const efficiency = share(0.6);
const start = celsius(12);
/** On the average over a piece when it is done, °C. Common practice, no source. */
const done = celsius(75);
const steamHeat = 2257;
/** Less than this share is within what any oven does by itself. Common practice, no source. */
const unseen = 0.05;

/** The ovens in the order that loads go into them: the one with most shelves first. */
export const ovensByShelves = (kitchen: Kitchen): Kitchen["ovens"] =>
  kitchen.ovens.filter((oven) => oven.shelves > 0).toSorted((a, b) => b.shelves - a.shelves);

/**
 * A length in the oven for what really stands in it: in step with what this oven would take for the card's own amount.
 * At the card's size and below it stays as it is; every load is as long as the slowest.
 */
export const loadedTime = (
  length: Estimate<Minutes>,
  setting: Celsius,
  technique: Technique | null,
  lot: Lot,
  loads: readonly number[],
  kitchen: Kitchen,
): Timed => {
  const plain: Timed = { minutes: length, because: null, kilos: lot.kilos, kilowatts: 0, millimetres: 0 };
  // What goes in hot asks little of the oven.
  if (!(lot.factor > 1 + 1e-9 && lot.kilos > 0 && lot.coldKilos > lot.kilos / 2)) return plain;
  const ovens = ovensByShelves(kitchen);
  const all = loads.reduce((sum, load) => sum + load, 0);
  const { specificHeat } = thermalProperties(mixtureOf(lot.contents).composition, celsius(50));
  const steam =
    technique?.mass === "evaporates"
      ? (technique.massShare * steamHeat) / ((specificHeat / 1000) * (done - start))
      : 0;
  // What is browned first and then roasted on is cold but once.
  const whole = minutes(Math.max(length.likely, lot.ovenInAll));
  let most = 1;
  let weakest = 0;
  loads.forEach((load, l) => {
    const oven = ovens[l % Math.max(1, ovens.length)];
    if (oven === undefined || all === 0) return;
    const inOven = (kilos: number): number =>
      minutesInOven(
        {
          power: kilowatts(oven.kilowatts),
          efficiency,
          setting,
          start,
          end: done,
          capacity: (kilos * specificHeat) / 1000,
          steam,
        },
        whole,
      );
    const here = (lot.kilos * load) / all;
    const ratio = inOven(here) / inOven(Math.min(here, lot.kilos / lot.factor));
    if (ratio > most) {
      most = ratio;
      weakest = oven.kilowatts;
    }
  });
  if (most <= 1 + unseen) return plain;
  return {
    ...plain,
    // The technique's own ends hold as well: only the likely and the high can be longer for the load.
    minutes: {
      low: length.low,
      likely: minutes(length.likely * most),
      high: scaleEstimate(length, most).high,
    },
    because: "oven-load",
    kilowatts: weakest,
  };
};
