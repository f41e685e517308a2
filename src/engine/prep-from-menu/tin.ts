import { mixtureOf } from "../heat/composition.ts";
import { thermalProperties } from "../heat/thermal-properties.ts";
import { deeperTimes, depthIn, type Tin } from "../heat/tins.ts";
import { type Metres, metres } from "../measure/heat-units.ts";
import { type Celsius, celsius } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Lot, Tins } from "./lot.ts";

const inch = 0.0254;
const sides = /(\d+(?:\.\d+)?)\s*(?:cm|in|inch)?\s*[x×]\s*(\d+(?:\.\d+)?)\s*(cm|in|inch)/i;
const width = /(\d+(?:\.\d+)?)[\s-]*(cm|in|inch)\b/i;

const lengthOf = (figure: string | undefined, unit: string | undefined): Metres =>
  metres(Number(figure) * (unit?.toLowerCase() === "cm" ? 0.01 : inch));

/** The tin that words tell the size of: "23 cm round tin", "20 cm square tin", "33 x 23 cm tin"; null when they tell none. */
export const tinFrom = (words: string): Tin | null => {
  const two = sides.exec(words);
  if (two) return { form: "rectangle", long: lengthOf(two[1], two[3]), wide: lengthOf(two[2], two[3]) };
  const one = width.exec(words);
  if (!one) return null;
  const wide = lengthOf(one[1], one[2]);
  return /square/i.test(words) ? { form: "rectangle", long: wide, wide } : { form: "round", diameter: wide };
};

/** The tins of a card that says what it fills, or names a tin with its size in the method; null for others. */
export const tinsOf = (dish: Dish): Tins | null => {
  const made = dish.yield;
  if (made?.kind === "tin") {
    const tin = tinFrom(made.noun);
    return tin === null || !(made.amount.likely > 0) ? null : { tin, count: made.amount.likely };
  }
  for (const { actions } of dish.steps)
    for (const { vessel } of actions) {
      const tin = vessel !== null && /\btin\b/.test(vessel) ? tinFrom(vessel) : null;
      if (tin !== null) return { tin, count: 1 };
    }
  return null;
};

/** As many whole tins as come nearest, and how much deeper it then stands in them than on the card. */
export const tinsAtSize = (
  tins: Tins,
  factor: number,
): { readonly tins: number; readonly deeper: number } => {
  const whole = Math.max(1, Math.round(tins.count * factor));
  return { tins: whole, deeper: (tins.count * factor) / whole };
};

/** What the time in the oven is multiplied by, and how deep it stands, in millimetres. One at the card's depth. */
export const tinTimes = (
  lot: Lot,
  setting: Celsius,
  fan: boolean,
): { readonly ratio: number; readonly millimetres: number } => {
  const same = { ratio: 1, millimetres: 0 };
  if (lot.tins === null || !(lot.kilos > 0)) return same;
  const { deeper } = tinsAtSize(lot.tins, lot.factor);
  if (Math.abs(deeper - 1) < 1e-9) return same;
  const { composition } = mixtureOf(lot.contents);
  const heavy = thermalProperties(composition, celsius(60)).density;
  const depth = depthIn(lot.kilos / lot.factor / lot.tins.count / heavy, lot.tins.tin);
  const ratio = deeperTimes(depth, metres(depth * deeper), composition, setting, fan);
  return ratio === null ? same : { ratio, millimetres: depth * deeper * 1000 };
};
