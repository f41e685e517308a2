import { addNutrition, labelNutrients } from "../../src/engine/declaration-from-menu/add-nutrition.ts";
import { labelRows } from "../../src/engine/declaration-from-menu/label-rows.ts";
import { foodById } from "../../src/engine/larder/foods.ts";
import { energyFactors, energyForLabelUs, saltOfSodium } from "../../src/engine/measure/energy-for-label.ts";
import type { Food } from "../../src/engine/model/food.ts";
import type { Check } from "./check.ts";

const food = (id: string): Food => {
  const found = foodById(id);
  if (found === null) throw new Error(`no food ${id}`);
  return found;
};

const together = (parts: readonly (readonly [string, number])[]) => {
  const total = parts.reduce((sum, [, grams]) => sum + grams, 0);
  const sum = addNutrition(parts.map(([id, grams]) => ({ name: id, food: food(id), grams })));
  return { sum, per100: (key: keyof typeof sum): number => (sum[key].value * 100) / total };
};

const annex = "Regulation (EU) 1169/2011, Annex XIV";
const almonds = `${annex}, of USDA SR28 (2015) food 12061`;
const custard = together([
  ["whole-milk", 500],
  ["egg-yolk", 100],
  ["granulated-sugar", 100],
]);
const custardSource = `${annex} and Annex I, of USDA SR28 (2015) foods 01211, 01125, 19335; worked by hand`;
const dressing = together([
  ["olive-oil", 300],
  ["red-wine-vinegar", 100],
  ["dijon-mustard", 20],
  ["salt", 5],
]);
const dressingSource = `${annex}, of USDA SR28 (2015) foods 04053, 02068, 02046, 02047; worked by hand`;
const factor = (name: keyof typeof energyFactors.kilojoules, kj: number, kcal: number): Check => ({
  what: `energy of a gram of ${name}, kJ and kcal`,
  source: annex,
  run: () => [
    [energyFactors.kilojoules[name], energyFactors.kilocalories[name]],
    [kj, kcal],
  ],
});

/** Energy, salt and what is counted as carbohydrate. */
export const checks: readonly Check[] = [
  factor("carbohydrate", 17, 4),
  factor("protein", 17, 4),
  factor("fat", 37, 9),
  factor("alcohol", 29, 7),
  factor("fibre", 8, 2),
  {
    what: "almonds, kJ in 100 g",
    source: almonds,
    run: () => [labelNutrients(food("almond")).kilojoules, 2460.81, 0.01],
  },
  {
    what: "almonds, kcal in 100 g",
    source: almonds,
    run: () => [labelNutrients(food("almond")).kilocalories, 595.17, 0.01],
  },
  {
    what: "almonds, kcal in 100 g by 4-4-9",
    source: "21 CFR 101.9(c)(1)(i)(B), of USDA SR28 (2015) food 12061",
    run: () => {
      const { protein, fat, carbohydrate, fibre } = food("almond").nutrients;
      const eu = (carbohydrate ?? 0) - (fibre ?? 0);
      return [
        energyForLabelUs({
          protein: protein ?? 0,
          fat: fat ?? 0,
          carbohydrate: eu,
          fibre: fibre ?? 0,
          alcohol: 0,
        }),
        620.17,
        0.01,
      ];
    },
  },
  {
    what: "almonds on a US label, kcal in 100 g",
    source: "21 CFR 101.9(c)(1), of USDA SR28 (2015) food 12061",
    run: () => {
      const facts = addNutrition([{ name: "almond", food: food("almond"), grams: 100 }]);
      return [labelRows(facts, "us").find((r) => r.nutrient === "kilocalories")?.figure.value, 620];
    },
  },
  {
    what: "carbohydrate of dried chickpeas leaves out fibre: 62.95 − 12.2 g",
    source: "Regulation (EU) 1169/2011, Annex I, 7, of USDA SR28 (2015) food 16056",
    run: () => [labelNutrients(food("dried-chickpea")).carbohydrate, 50.75, 0.01],
  },
  {
    what: "salt of salted butter, g in 100 g",
    source: "Regulation (EU) 1169/2011, Annex I, 11, of USDA SR28 (2015) food 01001: sodium 643 mg",
    run: () => [labelNutrients(food("salted-butter")).salt, 1.6075, 1e-9],
  },
  {
    what: "salt of unsalted butter, g in 100 g",
    source: "Regulation (EU) 1169/2011, Annex I, 11, of USDA SR28 (2015) food 01145: sodium 11 mg",
    run: () => [labelNutrients(food("unsalted-butter")).salt, 0.0275, 1e-9],
  },
  {
    what: "400 mg of sodium are 1 g of salt",
    source: "Regulation (EU) 1169/2011, Annex I, 11",
    run: () => [saltOfSodium(400), 1],
  },
  {
    what: "custard, kJ in 100 g",
    source: custardSource,
    run: () => [custard.per100("kilojoules"), 613.04, 0.01],
  },
  {
    what: "custard, kcal in 100 g",
    source: custardSource,
    run: () => [custard.per100("kilocalories"), 146.05, 0.01],
  },
  { what: "custard, fat in 100 g", source: custardSource, run: () => [custard.per100("fat"), 6.127, 0.001] },
  {
    what: "custard, saturates in 100 g",
    source: custardSource,
    run: () => [custard.per100("saturates"), 2.697, 0.001],
  },
  {
    what: "custard, carbohydrate in 100 g",
    source: custardSource,
    run: () => [custard.per100("carbohydrate"), 18.21, 0.005],
  },
  {
    what: "custard, sugars in 100 g",
    source: custardSource,
    run: () => [custard.per100("sugars"), 17.944, 0.001],
  },
  {
    what: "custard, protein in 100 g",
    source: custardSource,
    run: () => [custard.per100("protein"), 4.516, 0.001],
  },
  {
    what: "custard, salt in 100 g",
    source: custardSource,
    run: () => [custard.per100("salt"), 0.0943, 0.0001],
  },
  {
    what: "dressing, kJ in 100 g",
    source: dressingSource,
    run: () => [dressing.per100("kilojoules"), 2624.78, 0.01],
  },
  {
    what: "dressing, kcal in 100 g",
    source: dressingSource,
    run: () => [dressing.per100("kilocalories"), 638.43, 0.01],
  },
  {
    what: "dressing, fat in 100 g",
    source: dressingSource,
    run: () => [dressing.per100("fat"), 70.745, 0.001],
  },
  {
    what: "dressing, salt in 100 g",
    source: dressingSource,
    run: () => [dressing.per100("salt"), 1.278, 0.001],
  },
  {
    what: "egg 50 g: protein, and sodium as salt",
    source: "USDA SR28 (2015) food 01123: protein 12.56 g, sodium 142 mg in 100 g",
    run: () => {
      const { sum } = together([["egg", 50]]);
      return [[sum.protein.value, sum.salt.value], [6.28, 0.1775], 1e-9];
    },
  },
  {
    what: "sugars of yellow pepper, blank in the table, are missing and not nothing",
    source: "USDA SR28 (2015) food 11951 (sugars blank), 19335: 10 g give 9.98 g",
    run: () => {
      const { sugars } = together([
        ["yellow-pepper", 100],
        ["granulated-sugar", 10],
      ]).sum;
      return [
        [sugars.value.toFixed(2), sugars.complete, sugars.missing],
        ["9.98", false, ["yellow-pepper"]],
      ];
    },
  },
  {
    what: "sugars of shrimp, blank in the table beside 0 g of carbohydrate, are nothing",
    source: "USDA SR28 (2015) food 15270; a part is not more than its whole",
    run: () => {
      const { sugars } = together([["prawn", 100]]).sum;
      return [
        [sugars.value, sugars.complete],
        [0, true],
      ];
    },
  },
  {
    what: "sugars of whole milk (5.05 g) are not above its carbohydrate (4.78 g)",
    source: "USDA SR28 (2015) food 01211; a part is not more than its whole",
    run: () => {
      const { sum } = together([["whole-milk", 100]]);
      return [sum.sugars.value, 4.78, 1e-9];
    },
  },
];
