import { grams } from "#engine/index.ts";
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
];
