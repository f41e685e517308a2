import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Dish } from "../../model/dish.ts";
import { type Placed, placedActions, worksOn } from "./dish-graph.ts";

/** From the coolest to the hottest that is usual, °C. */
export type HeatRange = { readonly low: number; readonly high: number };

/** What ovens can be set to, °C; stone ovens are hotter and are called so. Common practice, no source. */
const anyOven: HeatRange = { low: 40, high: 300 };
/** Baking and roasting that is over within the time below, °C. Common practice, no source. */
const shortBake: HeatRange = { low: 110, high: 270 };
/** Bread, and roasting of so short a time, °C. Common practice, no source. */
const hotBake: HeatRange = { low: 130, high: 280 };
/** What cooks for hours, °C; below it nothing is done to a joint in a day. Common practice, no source. */
const longBake: HeatRange = { low: 75, high: 270 };
/** What cooks for an hour and a half and more burns above it, °C. Common practice, no source. */
const slowest: HeatRange = { low: 75, high: 225 };
/** Meringue dries rather than bakes, °C. Common practice, no source. */
const meringue: HeatRange = { low: 75, high: 200 };
/** Jars and bottles, °C. Common practice, no source. */
const jars: HeatRange = { low: 100, high: 200 };
/** Sugar boiled by itself: from thread to dark caramel, °C. Source: the sugar stages of data/techniques.csv. */
const sugar: HeatRange = { low: 95, high: 190 };
/** What a pan of milk, eggs or water can come to, °C. Common practice, no source. */
const wetPan: HeatRange = { low: 30, high: 110 };
/** Oil to fry in, °C; EU 2017/2158 has chips below 175. Common practice for the rest, no source. */
const oil: HeatRange = { low: 110, high: 200 };

// Minutes; what is as long in a cool oven dries, or is cooked low and slow on purpose.
const short = 90;

const slow =
  /dry|dried|dehydrat|jerky|crisps|overnight|low and slow|granola|warm(?:ed)? through|keep warm|warm the/i;
const inPot = /\b(?:lid|cover(?:ed)?|foil|casserole|braise)\b/i;
const turnsDown = /\b(?:turn|down|reduce|lower|drop)\b/i;
const notBaking: ReadonlySet<string> = new Set([
  "keep-warm",
  "warm-plates",
  "sterilise",
  "preheat",
  "prove",
  "adjust-heat",
  "dehydrate",
]);

/** The oven work that a setting is for: its own, or the next that is done in the oven. */
const bakingFrom = (dish: Dish, placed: Placed): Placed | null => {
  const all = placedActions(dish);
  return (
    all
      .slice(placed.at)
      .find(({ action }) => action.station === "oven" && !notBaking.has(action.technique ?? "")) ?? null
  );
};

const ovenRange = (dish: Dish, placed: Placed): HeatRange => {
  const baking = bakingFrom(dish, placed);
  const minutes = baking?.action.minutes?.likely ?? 0;
  if (placed.action.technique === "sterilise") return jars;
  // Where the words lose the oven work, a dish that is called roast or baked tells of it.
  if (baking === null && /\b(?:roast|baked?)\b/i.test(dish.title) && !slow.test(dish.text)) return longBake;
  if (baking === null || minutes <= 0) return anyOven;
  if (/meringue|pavlova/i.test(dish.title)) return meringue;
  if (minutes >= short) {
    if (/dry|dried|dehydrat|jerky/i.test(dish.text)) return anyOven;
    // A joint begins hot and is turned down; a pot under its lid is not.
    return inPot.test(baking.step.text) && !turnsDown.test(dish.text) ? slowest : longBake;
  }
  // "Overnight" in a title tells of the dough, and not of the oven.
  const called = dish.title.replace(/overnight/i, "");
  if (slow.test(`${called} ${baking.step.text} ${placed.step.text}`)) return anyOven;
  const isBread = dish.ingredients.some((i) =>
    /yeast|sourdough/.test(i.food === null ? i.name : (foodById(i.food)?.name ?? "")),
  );
  return isBread || baking.action.technique === "roast" ? hotBake : shortBake;
};

const isSweet =
  /sugar|syrup|caramel|jam|marmalade|toffee|honey|praline|brittle|fudge|jelly|amber|(?:soft|hard)[- ](?:ball|crack)|thread/i;
const isWet = /milk|cream|custard|yolk|egg|water|stock|soup|broth/i;
const isOil = /\b(?:oil|fat|lard|dripping|deep[- ]?fr)/i;

/** The range that is usual for what is done and for what it is done to; null when any is. */
export const usualHeat = (dish: Dish, placed: Placed): HeatRange | null => {
  const { action, step } = placed;
  const said = dish.text.slice(action.span.start, action.span.end);
  if (action.technique === "keep-warm") return /\d/.test(said) ? { low: 50, high: 120 } : null;
  const isOven = action.station === "oven" || /\boven\b/i.test(said);
  if (isOven) return ovenRange(dish, placed);
  const own = action.technique === null ? null : (techniqueById(action.technique)?.celsius ?? null);
  if (
    /^(?:boil|simmer|cook|reduce|bring-to-boil|heat|dissolve)$/.test(action.technique ?? "") &&
    isSweet.test(step.text) &&
    !isOil.test(said)
  )
    return { low: Math.min(own?.low ?? sugar.low, sugar.low), high: sugar.high };
  if (/^(?:heat|bring-to-boil|fry|deep-fry)$/.test(action.technique ?? "") && isOil.test(step.text))
    return oil;
  if (
    /^(?:cook|heat|warm|whisk|stir|whisk-over-water|thicken|simmer)$/.test(action.technique ?? "") &&
    (isWet.test(step.text) || isCustard(dish, placed))
  )
    return wetPan;
  return own;
};

/** Yolks are in the pan, and nothing in the words speaks of sugar or of fat to fry in. */
const isCustard = (dish: Dish, placed: Placed): boolean =>
  placed.action.station === "burner" &&
  !isSweet.test(placed.step.text) &&
  !isOil.test(placed.step.text) &&
  dish.ingredients.some((i) => /egg|yolk/.test(i.food ?? "") && worksOn(dish, placed, i.index));

const down = /\b(?:down|reduce|lower|drop)\b/i;
const up = /\b(?:up|raise|increase)\b/i;

/** The setting that was in force before an oven is turned down or up, when the new one goes the other way; else null. */
export const contradicts = (dish: Dish, placed: Placed): number | null => {
  const { action } = placed;
  if (action.technique !== "adjust-heat" || action.celsius === null) return null;
  const all = placedActions(dish);
  const before = all
    .slice(0, placed.at)
    .findLast(
      (p) => p.action.celsius !== null && (p.action.station === "oven" || p.action.technique === "preheat"),
    );
  const was = before?.action.celsius ?? null;
  if (was === null) return null;
  const said = dish.text.slice(action.span.start, action.span.end);
  return (down.test(said) && action.celsius >= was) || (up.test(said) && action.celsius <= was) ? was : null;
};
