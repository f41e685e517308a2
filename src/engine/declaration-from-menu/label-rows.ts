import {
  energyFactors,
  energyForLabelEu,
  energyForLabelUs,
  sodiumOfSalt,
} from "../measure/energy-for-label.ts";
import type { LabelFigure } from "../measure/label-figure.ts";
import {
  roundEnergyForLabelEu,
  roundMassForLabelEu,
  roundSaltForLabelEu,
  roundSaturatesForLabelEu,
} from "../measure/round-for-label-eu.ts";
import {
  roundCaloriesForLabelUs,
  roundFatForLabelUs,
  roundMassForLabelUs,
  roundSodiumForLabelUs,
} from "../measure/round-for-label-us.ts";
import type { KnownSum, NutritionFacts } from "../model/declaration.ts";
import type { Region } from "../model/sitting.ts";

/** One line of a nutrition table. */
export type LabelRow = {
  readonly nutrient: keyof NutritionFacts | "totalCarbohydrate" | "sodium";
  readonly unit: "kJ" | "kcal" | "g" | "mg";
  readonly figure: LabelFigure;
  /** False when some of it is not known: then the figure is "at least". */
  readonly complete: boolean;
};

/**
 * A nutrition table in the order and the roundings of the region: Annex XV for the EU and the UK (and, for want of its
 * own here, Australia), 21 CFR 101.9 for the US, where carbohydrate holds its fibre and energy is counted by 4-4-9.
 */
export const labelRows = (facts: NutritionFacts, region: Region): readonly LabelRow[] =>
  region === "us" ? usRows(facts) : euRows(facts);

const row = (
  nutrient: LabelRow["nutrient"],
  unit: LabelRow["unit"],
  sum: KnownSum,
  round: (amount: number) => LabelFigure,
): LabelRow => ({ nutrient, unit, figure: round(sum.value), complete: sum.complete });

const euRows = (facts: NutritionFacts): readonly LabelRow[] => [
  row("kilojoules", "kJ", facts.kilojoules, roundEnergyForLabelEu),
  row("kilocalories", "kcal", facts.kilocalories, roundEnergyForLabelEu),
  row("fat", "g", facts.fat, roundMassForLabelEu),
  row("saturates", "g", facts.saturates, roundSaturatesForLabelEu),
  row("carbohydrate", "g", facts.carbohydrate, roundMassForLabelEu),
  row("sugars", "g", facts.sugars, roundMassForLabelEu),
  row("fibre", "g", facts.fibre, roundMassForLabelEu),
  row("protein", "g", facts.protein, roundMassForLabelEu),
  row("salt", "g", facts.salt, roundSaltForLabelEu),
];

const usRows = (facts: NutritionFacts): readonly LabelRow[] => {
  const total: KnownSum = {
    value: facts.carbohydrate.value + facts.fibre.value,
    complete: facts.carbohydrate.complete && facts.fibre.complete,
    missing: [],
  };
  const macros = [total, facts.protein, facts.fat];
  const energy: KnownSum = {
    // What alcohol gives is in the EU sum alone: its factor is the same in both.
    value: energyForLabelUs({
      carbohydrate: facts.carbohydrate.value,
      fibre: facts.fibre.value,
      protein: facts.protein.value,
      fat: facts.fat.value,
      alcohol: alcoholIn(facts),
    }),
    complete: macros.every((sum) => sum.complete) && facts.kilocalories.complete,
    missing: [],
  };
  const sodium: KnownSum = { ...facts.salt, value: sodiumOfSalt(facts.salt.value) };
  return [
    row("kilocalories", "kcal", energy, roundCaloriesForLabelUs),
    row("fat", "g", facts.fat, roundFatForLabelUs),
    row("saturates", "g", facts.saturates, roundFatForLabelUs),
    row("sodium", "mg", sodium, roundSodiumForLabelUs),
    row("totalCarbohydrate", "g", total, roundMassForLabelUs),
    row("fibre", "g", facts.fibre, roundMassForLabelUs),
    row("sugars", "g", facts.sugars, roundMassForLabelUs),
    row("protein", "g", facts.protein, roundMassForLabelUs),
  ];
};

// Grams of alcohol are what the EU sum holds beyond its other parts; a sum with gaps gives none.
const alcoholIn = (facts: NutritionFacts): number => {
  const rest = energyForLabelEu(
    {
      carbohydrate: facts.carbohydrate.value,
      fibre: facts.fibre.value,
      protein: facts.protein.value,
      fat: facts.fat.value,
      alcohol: 0,
    },
    "kilocalories",
  );
  const beyond = (facts.kilocalories.value - rest) / energyFactors.kilocalories.alcohol;
  return facts.kilocalories.complete ? Math.max(0, Number(beyond.toPrecision(9))) : 0;
};
