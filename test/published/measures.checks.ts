import { readIngredients } from "../../src/engine/dish-from-card/lines/read-ingredients.ts";
import { measureFor } from "../../src/engine/larder/measures.ts";
import {
  celsiusFromFahrenheit,
  celsiusFromGasMark,
  fahrenheitFromGasMark,
  fanDifference,
} from "../../src/engine/measure/temperature.ts";
import type { Ingredient } from "../../src/engine/model/dish.ts";
import type { Region } from "../../src/engine/model/sitting.ts";
import type { Check } from "./check.ts";

/** What one of a unit holds, in the base unit of its row. */
const unit = (id: string, region: Region): number => measureFor(id, region, null)?.size?.likely ?? Number.NaN;

/** A line as a card of that region reads it. */
const line = (text: string, region: Region): Ingredient | undefined =>
  readIngredients(
    {
      source: "card",
      text,
      title: null,
      yields: [],
      times: [],
      blocks: [
        {
          role: "ingredients",
          heading: null,
          part: null,
          lines: [{ text, span: { start: 0, end: text.length } }],
        },
      ],
    },
    region,
  ).ingredients[0];

const grams = (text: string, region: Region): number => line(text, region)?.grams?.likely ?? Number.NaN;
const range = (text: string, region: Region): readonly number[] => {
  const found = line(text, region)?.grams;
  return found == null ? [] : [found.low, found.likely, found.high];
};

const ucum = (code: string): string => `UCUM 2.2, ${code}`;
const sr28 = (what: string): string => `USDA SR28, ${what}`;
const eggs = "Regulation (EC) 589/2008, art. 4, and USDA SR28 01123 (88 per cent edible)";
const memory = "from memory";
const trade = "common practice, no source";
const oven = "UK oven charts; °F = 25 × mark + 250";

/** Units, spoons, heat, eggs, packs and vague words. */
export const checks: readonly Check[] = [
  { what: "1 US cup in ml", source: ucum("[cup_us]"), run: () => [unit("cup", "us"), 236.5882365, 1e-7] },
  {
    what: "1 US tablespoon in ml",
    source: ucum("[tbs_us]"),
    run: () => [unit("tbsp", "us"), 14.78676478125, 1e-9],
  },
  {
    what: "1 US teaspoon in ml",
    source: ucum("[tsp_us]"),
    run: () => [unit("tsp", "us"), 4.92892159375, 1e-9],
  },
  {
    what: "1 US fluid ounce in ml",
    source: ucum("[foz_us]"),
    run: () => [unit("fl oz", "us"), 29.5735295625, 1e-9],
  },
  {
    what: "1 US gallon in ml",
    source: ucum("[gal_us]"),
    run: () => [unit("gallon", "us"), 3785.411784, 1e-6],
  },
  { what: "1 US quart in ml", source: ucum("[qt_us]"), run: () => [unit("quart", "us"), 946.352946, 1e-6] },
  {
    what: "1 imperial pint in ml",
    source: ucum("[pt_br]"),
    run: () => [unit("pint", "uk"), 568.26125, 1e-9],
  },
  {
    what: "1 imperial gallon in ml",
    source: ucum("[gal_br]"),
    run: () => [unit("gallon", "uk"), 4546.09, 1e-9],
  },
  {
    what: "1 imperial gill in ml",
    source: ucum("[gil_br]"),
    run: () => [unit("gill", "uk"), 142.0653125, 1e-7],
  },
  {
    what: "imperial pint ÷ US pint",
    source: ucum("[pt_br], [pt_us]"),
    run: () => [unit("pint", "uk") / unit("pint", "us"), 1.20095, 1e-5],
  },
  {
    what: "20 imperial fluid ounces are a pint",
    source: ucum("[foz_br]"),
    run: () => [20 * unit("fl oz", "uk"), unit("pint", "uk"), 1e-9],
  },
  {
    what: "16 US fluid ounces are a pint",
    source: ucum("[foz_us]"),
    run: () => [16 * unit("fl oz", "us"), unit("pint", "us"), 1e-9],
  },
  { what: "1 pound in g", source: ucum("[lb_av]"), run: () => [unit("lb", "uk"), 453.59237, 1e-9] },
  {
    what: "16 ounces are a pound",
    source: ucum("[oz_av]"),
    run: () => [16 * unit("oz", "uk"), unit("lb", "uk"), 1e-9],
  },
  {
    what: "2.5 lb of flour in g",
    source: ucum("[lb_av]"),
    run: () => [grams("2.5 lb flour", "uk"), 1133.980925, 1e-6],
  },
  {
    what: "1 lb 4 oz of mince in g",
    source: ucum("[lb_av], [oz_av]"),
    run: () => [grams("1 lb 4 oz beef mince", "uk"), 566.9904625, 1e-6],
  },
  { what: "a drop in ml", source: ucum("[drp]"), run: () => [unit("drop", "uk"), 0.05] },
  { what: "an inch in cm", source: ucum("[in_i]"), run: () => [unit("inch", "uk"), 2.54] },
  {
    what: "Australian tablespoon in teaspoons",
    source: "Healthy Kids NSW, conversion chart",
    run: () => [unit("tbsp", "au") / unit("tsp", "au"), 4],
  },
  {
    what: "Australian cup in ml",
    source: "Healthy Kids NSW, conversion chart",
    run: () => [unit("cup", "au"), 250],
  },
  {
    what: "UK tablespoon in ml",
    source: "metric spoon: Healthy Kids NSW, teaspoon × 3",
    run: () => [unit("tbsp", "uk"), 3 * unit("tsp", "uk")],
  },
  { what: "a UK dessertspoon in ml", source: memory, run: () => [unit("dsp", "uk"), 10] },
  { what: "gas 4 in °F", source: oven, run: () => [fahrenheitFromGasMark(4), 350] },
  {
    what: "gas ¼, ½, 10 in °F",
    source: oven,
    run: () => [[0.25, 0.5, 10].map(fahrenheitFromGasMark), [225, 250, 500]],
  },
  { what: "gas 4 on the dial in °C", source: oven, run: () => [celsiusFromGasMark(4), 180] },
  { what: "gas 7 on the dial in °C", source: oven, run: () => [celsiusFromGasMark(7), 220] },
  { what: "350 °F in °C", source: "(°F − 32) × 5/9", run: () => [celsiusFromFahrenheit(350), 176.67, 0.01] },
  { what: "425 °F in °C", source: "(°F − 32) × 5/9", run: () => [celsiusFromFahrenheit(425), 218.33, 0.01] },
  {
    what: "gas 6 in a fan oven, °C",
    source: "Healthy Kids NSW: 20 degrees lower",
    run: () => [(celsiusFromGasMark(6) ?? 0) - fanDifference, 180],
  },
  {
    what: "1 US cup of bread flour in g",
    source: sr28("20083"),
    run: () => [grams("1 cup bread flour", "us"), 137, 0.5],
  },
  {
    what: "1 US cup of butter in g",
    source: sr28("01001"),
    run: () => [grams("1 cup butter", "us"), 227, 1],
  },
  {
    what: "1 US tablespoon of honey in g",
    source: sr28("19296"),
    run: () => [grams("1 tbsp honey", "us"), 21, 0.3],
  },
  {
    what: "250 ml of granulated sugar in g",
    source: `${sr28("19335")}, 200 g a cup, 4.2 g a teaspoon`,
    run: () => [grams("1 cup granulated sugar", "au"), 211.3, 2],
  },
  {
    what: "1 teaspoon of table salt in g",
    source: sr28("02047"),
    run: () => [grams("1 tsp salt", "us"), 6, 0.05],
  },
  {
    what: "a stick of butter in g",
    source: sr28("01001"),
    run: () => [grams("1 stick butter", "us"), 113, 0.5],
  },
  {
    what: "a dozen US large eggs, shelled, in g",
    source: sr28("01123"),
    run: () => [grams("12 large eggs", "us"), 600],
  },
  {
    what: "8 yolks of US large eggs in g",
    source: sr28("01125"),
    run: () => [grams("8 egg yolks", "us"), 136, 1],
  },
  {
    what: "8 whites of US large eggs in g",
    source: sr28("01124"),
    run: () => [grams("whites of 8 eggs", "us"), 264, 1],
  },
  {
    what: "a UK medium egg of 58 g, shelled",
    source: eggs,
    run: () => [grams("1 medium egg", "uk"), 0.88 * 58, 0.1],
  },
  {
    what: "a UK large egg of 68 g, shelled",
    source: eggs,
    run: () => [grams("1 large egg", "uk"), 0.88 * 68, 0.1],
  },
  {
    what: "4 leaves of gold gelatine in g",
    source: "leaf weights after the hydrocolloid guide: gold 2.0 g",
    run: () => [grams("4 leaves gelatine", "uk"), 8, 0.1],
  },
  {
    what: "a packet of dried yeast in g",
    source: sr28("18375"),
    run: () => [grams("1 packet dried yeast", "us"), 7.2, 0.3],
  },
  {
    what: "an envelope of gelatine in g",
    source: sr28("19177"),
    run: () => [grams("1 envelope powdered gelatine", "us"), 7],
  },
  { what: "a clove of garlic in g", source: sr28("11215"), run: () => [grams("1 clove garlic", "uk"), 3] },
  {
    what: "a stick of celery in g",
    source: sr28("11143"),
    run: () => [grams("1 stick celery", "uk"), 40, 0.5],
  },
  {
    what: "a medium, a small and a large onion in g",
    source: sr28("11282"),
    run: () => [["1 onion", "1 small onion", "1 large onion"].map((l) => grams(l, "uk")), [110, 70, 150]],
  },
  {
    what: "a bunch of spinach in g",
    source: sr28("11457"),
    run: () => [grams("1 bunch spinach", "us"), 340],
  },
  {
    what: "juice of a lemon, a lime and an orange in g",
    source: sr28("09152, 09160, 09206"),
    run: () => [
      ["juice of 1 lemon", "juice of 1 lime", "juice of 1 orange"].map((l) => grams(l, "uk")),
      [48, 44, 86],
    ],
  },
  {
    what: "zest of a lemon in g",
    source: sr28("09156, a teaspoon"),
    run: () => [grams("zest of 1 lemon", "uk"), 2],
  },
  {
    what: "a pinch of salt in g: least, likely, most",
    source: "spoon makers (1⁄16 to ⅛ tsp) × SR28 02047",
    run: () => [range("a pinch of salt", "uk"), [0.375, 0.4, 0.75], 0.001],
  },
  { what: "a dash of salt in g", source: sr28("02047"), run: () => [grams("a dash of salt", "us"), 0.4] },
  {
    what: "a dash of black pepper in g",
    source: sr28("02030"),
    run: () => [grams("a dash of black pepper", "us"), 0.1],
  },
  {
    what: "a knob of butter in g: least, likely, most",
    source: "newspapers and cookery pages that agree",
    run: () => [range("a knob of butter", "uk"), [10, 20, 30]],
  },
  {
    what: "a glug of oil is 1 to 2 tablespoons",
    source: "newspapers and cookery pages that agree",
    run: () => [measureFor("glug", "uk", null)?.size, { low: 15, likely: 20, high: 30 }],
  },
  {
    what: "a drizzle is a teaspoon to a tablespoon",
    source: "newspapers and cookery pages that agree",
    run: () => [measureFor("drizzle", "uk", null)?.size, { low: 5, likely: 7, high: 15 }],
  },
  {
    what: "a ladle of 4 US fluid ounces in ml",
    source: "Institute of Child Nutrition, Basics at a Glance",
    run: () => [unit("ladle", "us"), 4 * 29.5735, 2],
  },
  {
    what: "a number 16 scoop in ml",
    source: "Institute of Child Nutrition: 946.35 ÷ 16",
    run: () => [unit("scoop", "us"), 946.35 / 16, 1],
  },
  {
    what: "a US can number 300 of tomatoes in g",
    source: "American Can Company, 14.5 oz",
    run: () => [grams("1 can tomatoes", "us"), 14.5 * 28.3495, 1],
  },
  {
    what: "a tin of chickpeas, drained, in g",
    source: memory,
    run: () => [grams("1 tin chickpeas, drained", "uk"), 240],
  },
  {
    what: "a thumb of ginger in g",
    source: "three pages that disagree, 5 to 30 g",
    run: () => [range("a thumb of ginger", "uk"), [5, 15, 30]],
  },
  {
    what: "a heaped spoon holds half as much again, or twice",
    source: trade,
    run: () => [measureFor("heaped", "uk", null)?.size, { low: 1.5, likely: 1.75, high: 2 }],
  },
];
