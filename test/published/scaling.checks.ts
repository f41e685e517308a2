import { moistFood } from "#engine/heat/composition.ts";
import { deeperTimes, depthIn, sameDepthTimes, type Tin, tinArea } from "#engine/heat/tins.ts";
import { celsius, grams, millilitres } from "#engine/index.ts";
import { metres } from "#engine/measure/heat-units.ts";
import { toQuarter, type UsVolume, usVolume, usWeight } from "#engine/measure/us-measures.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { dish, ingredient, sitting } from "../help/dishes.ts";
import type { Check } from "./check.ts";

const pound = 453.59237;
const gallon = 3785.411784;

/** A card for so many portions with so much of one food, on a menu for so many covers. */
const scaled = (portions: number, weight: number, covers: number) => {
  const card = dish("card", portions, [ingredient(0, "water", grams(weight))]);
  const version = menuFromDishes(sitting(["card"], covers), [card]).value.dishes[0]?.versions[0];
  return {
    factor: version?.factor ?? Number.NaN,
    grams: version?.ingredients[0]?.edible?.likely ?? Number.NaN,
  };
};

const armedForces = "Armed Forces Recipe Service (TM 10-412), General Information, recipe conversion";
const almanac = "Old Farmer's Almanac, cooking for a crowd (table of 25, 50 and 100)";
const latimes = "Los Angeles Times, 8 August 1987, guide to multiplying recipes for six (exact quotients)";

const crowd: readonly (readonly [food: string, for25: number, covers: number, amount: number])[] = [
  ["chicken breast, lb", 12.5, 50, 25],
  ["chicken breast, lb", 12.5, 100, 50],
  ["fish fillet, lb", 7.5, 50, 15],
  ["fish fillet, lb", 7.5, 100, 30],
  ["roast meat, lb", 10, 100, 40],
  ["potatoes, lb", 9, 50, 18],
  ["potatoes, lb", 9, 100, 36],
  ["carrots, lb", 7.5, 100, 30],
  ["meat loaf, lb", 6, 100, 24],
];

const navy = "NAVEDTRA 14163, Volume Adjustment, and Armed Forces Recipe Service, A-1";
const geometry = "geometry";

const measures = ({ gallons, quarts, pints, cups, tablespoons, teaspoons }: UsVolume): readonly number[] => [
  gallons,
  quarts,
  pints,
  cups,
  tablespoons,
  teaspoons,
];
const poured = (gallons: number) => measures(usVolume(millilitres(gallons * gallon)));
const weighed = (pounds: number) => {
  const found = usWeight(grams(pounds * pound));
  return [found.pounds, found.ounces];
};

const round = (cm: number): Tin => ({ form: "round", diameter: metres(cm / 100) });
const square = (cm: number): Tin => ({ form: "rectangle", long: metres(cm / 100), wide: metres(cm / 100) });
const rectangle = (long: number, wide: number): Tin => ({
  form: "rectangle",
  long: metres(long / 100),
  wide: metres(wide / 100),
});
const cm2 = (tin: Tin): number => tinArea(tin) * 10_000;

const tins: readonly (readonly [what: string, tin: Tin, area: number])[] = [
  ["round, 15 cm", round(15), 177],
  ["round, 18 cm", round(18), 254],
  ["round, 20 cm", round(20), 314],
  ["round, 23 cm", round(23), 415],
  ["round, 25 cm", round(25), 491],
  ["round, 28 cm", round(28), 616],
  ["round, 30 cm", round(30), 707],
  ["square, 20 cm", square(20), 400],
  ["square, 23 cm", square(23), 529],
  ["23 × 33 cm", rectangle(23, 33), 759],
  ["Gastronorm 1/1, nominal", rectangle(53, 32.5), 1722],
];

/** Ounces to two decimals of a pound, as the guideline card has them. */
const ofAPound: readonly number[] = [
  0.06, 0.13, 0.19, 0.25, 0.31, 0.38, 0.44, 0.5, 0.56, 0.63, 0.69, 0.75, 0.81, 0.88, 0.94,
];

/** Portions to amounts, against worked conversions. */
export const checks: readonly Check[] = [
  {
    what: "348 portions of a card for 100: factor 3.48",
    source: armedForces,
    run: () => [scaled(100, 1, 348).factor, 3.48, 1e-9],
  },
  {
    what: "1 lb 4 oz for 100 is 4.35 lb for 348",
    source: armedForces,
    run: () => [scaled(100, 1.25 * pound, 348).grams / pound, 4.35, 1e-9],
  },
  {
    what: "2 lb for 100 is 5.22 lb for 261",
    source: armedForces,
    run: () => [scaled(100, 2 * pound, 261).grams / pound, 5.22, 1e-9],
  },
  {
    what: "6 gal for 100 is 19.98 gal for 333",
    source: armedForces,
    run: () => [scaled(100, 6 * gallon, 333).grams / gallon, 19.98, 1e-9],
  },
  {
    what: "30 lb for 100 is 102 lb for 340",
    source: armedForces,
    run: () => [scaled(100, 30 * pound, 340).grams / pound, 102, 1e-9],
  },
  { what: "6 to 25", source: latimes, run: () => [scaled(6, 1, 25).factor, 4.17, 0.005] },
  { what: "6 to 50", source: latimes, run: () => [scaled(6, 1, 50).factor, 8.33, 0.005] },
  { what: "6 to 100", source: latimes, run: () => [scaled(6, 1, 100).factor, 16.67, 0.005] },
  ...crowd.map(
    ([food, for25, covers, amount]): Check => ({
      what: `${for25} of ${food}, for 25 is ${amount} for ${covers}`,
      source: almanac,
      run: () => [scaled(25, for25 * pound, covers).grams / pound, amount, 1e-9],
    }),
  ),
  {
    what: "333 portions of 6 gal for 100: 19 gal 3 qt 1 pt 1 c 10 tbsp 2¾ tsp",
    source: navy,
    run: () => [poured((6 * 333) / 100), [19, 3, 1, 1, 10, 2.75]],
  },
  {
    what: "a US gallon is one gallon and nothing more",
    source: navy,
    run: () => [poured(1), [1, 0, 0, 0, 0, 0]],
  },
  {
    what: "a US cup, a pint and a quart are one of each",
    source: navy,
    run: () => [
      [1 / 16, 1 / 8, 1 / 4].map(poured),
      [
        [0, 0, 0, 1, 0, 0],
        [0, 0, 1, 0, 0, 0],
        [0, 1, 0, 0, 0, 0],
      ],
    ],
  },
  {
    what: "what is a hair below a gallon is poured as one",
    source: navy,
    run: () => [poured(0.99995), [1, 0, 0, 0, 0, 0]],
  },
  {
    what: "1 lb 4 oz for 100 is 4 lb 5½ oz for 348",
    source: armedForces,
    run: () => [weighed(1.25 * 3.48), [4, 5.5]],
  },
  {
    what: "3 lb of pared cucumber, bought at 1.19: 3 lb 9 oz",
    source: "Armed Forces Recipe Service, conversion of edible portion to as purchased",
    run: () => [weighed(3 * 1.19), [3, 9]],
  },
  {
    what: "ounces of .12, .13, .37, .38, .62, .63, .87 and .88 in quarters",
    source: armedForces,
    run: () => [
      [5.12, 5.13, 5.37, 5.38, 5.62, 5.63, 5.87, 5.88].map(toQuarter),
      [5, 5.25, 5.25, 5.5, 5.5, 5.75, 5.75, 6],
    ],
  },
  ...ofAPound.map(
    (decimal, i): Check => ({
      what: `${decimal} lb weighs out as ${i + 1} oz`,
      source: armedForces,
      run: () => [weighed(decimal), [0, i + 1]],
    }),
  ),
  ...tins.map(
    ([what, tin, area]): Check => ({
      what: `floor of a tin, ${what}: cm²`,
      source: geometry,
      run: () => [cm2(tin), area, 0.6],
    }),
  ),
  {
    what: "20 cm round to 26 cm round",
    source: geometry,
    run: () => [sameDepthTimes(round(20), round(26)), 1.69, 1e-9],
  },
  {
    what: "20 cm round to 23 cm round",
    source: geometry,
    run: () => [sameDepthTimes(round(20), round(23)), 1.3225, 1e-9],
  },
  {
    what: "round to square of one width",
    source: geometry,
    run: () => [sameDepthTimes(round(20), square(20)), 1.273, 5e-4],
  },
  {
    what: "23 cm round to Gastronorm 1/1",
    source: geometry,
    run: () => [sameDepthTimes(round(23), rectangle(53, 32.5)), 4.15, 0.02],
  },
  {
    what: "two 20 cm tins for one of 28 cm",
    source: geometry,
    run: () => [sameDepthTimes(round(28), round(20), 2), (2 * 400) / 784, 1e-9],
  },
  {
    what: "2 US quarts in a pot 8 in across: inches deep",
    source: "Scaling recipes, kitchen science, ch. 10: 2.298",
    run: () => [depthIn((2 * gallon) / 4 / 1e6, round(8 * 2.54)) / 0.0254, 2.298, 0.001],
  },
  {
    what: "1 US quart in the same: inches deep",
    source: "Scaling recipes, kitchen science, ch. 10: 1.149",
    run: () => [depthIn(gallon / 4 / 1e6, round(8 * 2.54)) / 0.0254, 1.149, 0.001],
  },
  {
    what: "twice as deep bakes between two and four times as long",
    source: "heat equation: thickness where the surface hinders, its square where the inside does",
    run: () => {
      const times = deeperTimes(metres(0.03), metres(0.06), moistFood, celsius(170), true) ?? 0;
      return [times > 2 && times < 4, true];
    },
  },
];
