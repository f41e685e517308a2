import { foodById } from "../../src/engine/larder/foods.ts";
import type { Check } from "./check.ts";

const cup = 236.5882365;
const tablespoon = cup / 16;
const teaspoon = cup / 48;
const fluidOunce = cup / 8;

const density = (id: string, household: string, grams: number, millilitres: number): Check => ({
  what: `grams a millilitre of ${id}, from ${grams} g ${household}`,
  source: "USDA SR28 (2015), household weights; US customary volumes, UCUM",
  run: () => [foodById(id)?.density, grams / millilitres, 0.006],
});

const piece = (id: string, name: string, grams: number, ndb: string): Check => ({
  what: `edible grams of one ${id}, ${name}`,
  source: `USDA SR28 (2015), household weights of food ${ndb}`,
  run: () => [foodById(id)?.pieces.find((one) => one.name === name)?.grams, grams, 0],
});

/** Weight of what is poured, spooned and counted. */
export const checks: readonly Check[] = [
  density("plain-flour", "a cup", 125, cup),
  density("wholemeal-flour", "a cup", 120, cup),
  density("cornflour", "a cup", 128, cup),
  density("granulated-sugar", "a teaspoon", 4.2, teaspoon),
  density("icing-sugar", "a cup, unsifted", 120, cup),
  density("light-brown-sugar", "a cup, packed", 220, cup),
  density("honey", "a cup", 339, cup),
  density("salt", "a teaspoon", 6, teaspoon),
  density("bicarbonate-of-soda", "a teaspoon", 4.6, teaspoon),
  density("powdered-gelatine", "a tablespoon", 7, tablespoon),
  density("cocoa-powder", "a cup", 86, cup),
  density("unsalted-butter", "a tablespoon", 14.2, tablespoon),
  density("olive-oil", "a cup", 216, cup),
  density("whole-milk", "a cup", 244, cup),
  density("whipping-cream", "a cup, fluid", 238, cup),
  density("natural-yogurt", "a cup", 245, cup),
  density("long-grain-rice", "a cup", 185, cup),
  density("red-wine", "a fluid ounce", 29.4, fluidOunce),
  density("soy-sauce", "a cup", 255, cup),
  density("raisin", "a cup, not packed", 145, cup),
  density("cinnamon", "a teaspoon", 2.6, teaspoon),
  density("dried-oregano", "a teaspoon of leaves", 1, teaspoon),
  piece("onion", "medium", 110, "11282"),
  piece("onion", "large", 150, "11282"),
  piece("garlic", "clove", 3, "11215"),
  piece("carrot", "medium", 61, "11124"),
  piece("celery", "stick", 40, "11143"),
  piece("tomato", "medium", 123, "11529"),
  piece("apple", "medium", 182, "09003"),
  piece("lemon", "medium", 58, "09150"),
  piece("egg", "large", 50, "01123"),
  piece("egg-yolk", "large", 17, "01125"),
  piece("egg-white", "large", 33, "01124"),
  piece("banana", "medium", 118, "09040"),
  piece("unsalted-butter", "stick", 113, "01145"),
];
