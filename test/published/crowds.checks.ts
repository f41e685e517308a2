import { count, exactly, grams, millilitres } from "#engine/index.ts";
import { asPurchasedFor, edibleOf } from "#engine/measure/trim.ts";
import { usVolume } from "#engine/measure/us-measures.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { dish, ingredient, pieces, sitting } from "../help/dishes.ts";
import type { Check } from "./check.ts";

const pound = 453.59237;
const quart = 946.352946;
const almanac = "Old Farmer's Almanac, cooking for a crowd (table of 25, 50 and 100)";
const bcc = "BC Cook Articulation Committee 2015, yield testing";
const cwp = "FAO/CWP Handbook of Fishery Statistics, indicative conversion factors";
const byHand = "worked by hand: Y = Y1 × Y2";

/** What one line of a card for 25 comes to for so many. */
const forCrowd = (amount: number, covers: number) => {
  const card = dish("card", 25, [ingredient(0, "water", grams(amount), pieces(amount))]);
  return menuFromDishes(sitting(["card"], covers), [card]).value.dishes[0]?.versions[0]?.ingredients[0];
};

const weighed = (amount: number, covers: number): number =>
  forCrowd(amount * pound, covers)?.edible?.likely ?? Number.NaN;
const counted = (amount: number, covers: number): number =>
  forCrowd(amount, covers)?.pieces?.likely ?? Number.NaN;
const measured = (quarts: number, covers: number): readonly number[] => {
  const all = usVolume(millilitres(forCrowd(quarts * quart, covers)?.edible?.likely ?? Number.NaN));
  return [all.gallons, all.quarts, all.pints, all.cups];
};

const heavy: readonly (readonly [food: string, for25: number, covers: number, pounds: number])[] = [
  ["roast meat, lb", 10, 50, 20],
  ["meat loaf, lb", 6, 50, 12],
  ["carrots or beetroot, lb", 7.5, 50, 15],
  ["butter, cheese or coffee, lb", 0.75, 50, 1.5],
  ["butter, cheese or coffee, lb", 0.75, 100, 3],
];

const poured: readonly (readonly [
  food: string,
  quarts: number,
  covers: number,
  words: string,
  to: readonly number[],
])[] = [
  ["soup", 5, 50, "2½ gal", [2, 2, 0, 0]],
  ["soup", 5, 100, "5 gal", [5, 0, 0, 0]],
  ["baked beans", 5, 100, "5 gal", [5, 0, 0, 0]],
  ["dressing", 0.75, 50, "1½ qt", [0, 1, 1, 0]],
  ["dressing", 0.75, 100, "3 qt", [0, 3, 0, 0]],
  ["milk", 6, 50, "3 gal", [3, 0, 0, 0]],
  ["milk", 6, 100, "6 gal", [6, 0, 0, 0]],
  ["ice cream", 4, 100, "4 gal", [4, 0, 0, 0]],
];

const loss = (what: string, before: number, after: number, percent: number, source: string): Check => ({
  what: `${what}: ${before} leaves ${after}, ${percent} %`,
  source,
  run: () => [edibleOf(exactly(grams(before)), percent / 100).likely, after, before * 0.0006],
});

/** Amounts for many, and what is left on the way to the plate, against tables and worked yields. */
export const checks: readonly Check[] = [
  ...heavy.map(
    ([food, for25, covers, pounds]): Check => ({
      what: `${for25} of ${food}, for 25 is ${pounds} for ${covers}`,
      source: almanac,
      run: () => [weighed(for25, covers) / pound, pounds, 1e-9],
    }),
  ),
  ...poured.map(
    ([food, quarts, covers, words, to]): Check => ({
      what: `${quarts} qt of ${food} for 25 is ${words} for ${covers}: gallons, quarts, pints, cups`,
      source: almanac,
      run: () => [measured(quarts, covers), to],
    }),
  ),
  {
    what: "50 rolls for 25 are 100 for 50 and 200 for 100",
    source: almanac,
    run: () => [[50, 100].map((n) => counted(50, n)), [count(100), count(200)]],
  },
  loss("carrots, peeled, g", 1000, 800, 80, bcc),
  loss("ribeye, roasted and rested, g", 1605, 1468, 91.5, bcc),
  loss("tenderloin, trimmed of 750 g", 2500, 1750, 70, `${bcc}; trims from memory`),
  loss("salmon, trimmed of 2.75 kg", 7750, 5000, 64.5, `${bcc}; trims from memory`),
  {
    what: "3 kg of skinless cod fillet from gutted cod, head on: kg",
    source: `${cwp}: 3.23 and 1.2 of live weight`,
    run: () => [asPurchasedFor(exactly(grams(3000)), 1.2 / 3.23).likely / 1000, 8.08, 0.01],
  },
  {
    what: "cod with skin on from gutted cod, head on: 49.0 %",
    source: `${cwp}: 2.45 and 1.2 of live weight`,
    run: () => [edibleOf(exactly(grams(1000)), 1.2 / 2.45).likely / 10, 48.98, 0.01],
  },
  {
    what: "5 kg at 60 % and then at 78 % in the oven is 46.8 % on the plate",
    source: byHand,
    run: () => [edibleOf(edibleOf(exactly(grams(5000)), 0.6), 0.78).likely / 50, 46.8, 1e-9],
  },
];
