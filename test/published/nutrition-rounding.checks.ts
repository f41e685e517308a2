import type { LabelFigure } from "../../src/engine/measure/label-figure.ts";
import {
  roundEnergyForLabelEu,
  roundMassForLabelEu,
  roundSaltForLabelEu,
  roundSaturatesForLabelEu,
} from "../../src/engine/measure/round-for-label-eu.ts";
import {
  roundCaloriesForLabelUs,
  roundFatForLabelUs,
  roundMassForLabelUs,
  roundSodiumForLabelUs,
} from "../../src/engine/measure/round-for-label-us.ts";
import { labelFigureText } from "../../src/words/write-up-text.ts";
import type { Check } from "./check.ts";

const printed = (
  what: string,
  source: string,
  round: (amount: number) => LabelFigure,
  rows: readonly (readonly [number, string])[],
): Check[] =>
  rows.map(([amount, text]) => ({
    what: `${what}: ${amount} is printed "${text}"`,
    source,
    run: () => [labelFigureText(round(amount)), text],
  }));

const eu =
  "European Commission, Guidance on tolerances for the control of nutrient values (December 2012), rounding table";
const us = "FDA, Food Labeling Guide, Appendix H (21 CFR 101.9(c))";
const halfUp = "; ties half up, common practice";

/** What a nutrition label prints, on both sides of every boundary. */
export const checks: readonly Check[] = [
  ...printed("EU energy", eu, roundEnergyForLabelEu, [
    [2460.81, "2461"],
    [595.17, "595"],
    [0.4, "0"],
  ]),
  ...printed("EU fat, g", eu, roundMassForLabelEu, [
    [0.5, "<0.5"],
    [0.51, "0.5"],
    [9.94, "9.9"],
    [9.96, "10"],
    [10, "10"],
    [10.4, "10"],
    [10.5, "11"],
    [50.75, "51"],
    [0, "0"],
  ]),
  ...printed("EU saturates, g", eu, roundSaturatesForLabelEu, [
    [0.1, "<0.1"],
    [0.14, "0.1"],
    [10.6, "11"],
    [9.95, "10"],
  ]),
  ...printed("EU salt, g", eu, roundSaltForLabelEu, [
    [0.0125, "<0.01"],
    [0.0126, "0.01"],
    [0.0275, "0.03"],
    [0.994, "0.99"],
    [0.996, "1.0"],
    [1.04, "1.0"],
    [1.6075, "1.6"],
  ]),
  ...printed("US calories", us, roundCaloriesForLabelUs, [
    [4.9, "0"],
    [5, "5"],
    [47, "45"],
    [50, "50"],
    [52, "50"],
    [369.5, "370"],
    [620.17, "620"],
  ]),
  ...printed("US calories", us + halfUp, roundCaloriesForLabelUs, [[55, "60"]]),
  ...printed("US fat, g", us, roundFatForLabelUs, [
    [0.49, "0"],
    [0.5, "0.5"],
    [4.74, "4.5"],
    [5.4, "5"],
    [5.5, "6"],
  ]),
  ...printed("US fat, g", us + halfUp, roundFatForLabelUs, [
    [2.25, "2.5"],
    [4.75, "5"],
  ]),
  ...printed("US sodium, mg", us, roundSodiumForLabelUs, [
    [4.9, "0"],
    [5, "5"],
    [140, "140"],
    [141, "140"],
    [984.5, "980"],
  ]),
  ...printed("US sodium, mg", us + halfUp, roundSodiumForLabelUs, [[145, "150"]]),
  ...printed("US carbohydrate, g", us, roundMassForLabelUs, [
    [0.49, "0"],
    [0.7, "<1"],
    [1, "1"],
  ]),
  ...printed("US carbohydrate, g", us + halfUp, roundMassForLabelUs, [[1.5, "2"]]),
];
