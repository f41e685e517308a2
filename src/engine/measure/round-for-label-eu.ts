import { type LabelFigure, lessThan, nearest, stated } from "./label-figure.ts";

/*
 * Rounding of the nutrition declaration in the EU and the UK: European Commission, Guidance document for competent
 * authorities on tolerances, December 2012, rounding table. The table gives no rule for ties; half goes up.
 */

/** Energy: to 1 kJ and to 1 kcal, always. */
export const roundEnergyForLabelEu = (amount: number): LabelFigure => stated(nearest(amount, 1), 0);

/** Fat, carbohydrate, sugars, protein, fibre, polyols, starch, in grams. */
export const roundMassForLabelEu = (grams: number): LabelFigure => inBands(grams, 0.5, 10, 1);

/** Saturates, mono- and polyunsaturates, in grams. */
export const roundSaturatesForLabelEu = (grams: number): LabelFigure => inBands(grams, 0.1, 10, 1);

/** Salt in grams; the least stated figure is 0.01 g though the band ends at 0.0125 g. */
export const roundSaltForLabelEu = (grams: number): LabelFigure => {
  if (grams <= 0) return stated(0, 0);
  if (grams <= 0.0125) return lessThan(0.01, 2);
  if (grams >= 1) return stated(nearest(grams, 0.1), 1);
  const value = nearest(grams, 0.01);
  return stated(value, value >= 1 ? 1 : 2);
};

const inBands = (grams: number, negligible: number, whole: number, decimals: number): LabelFigure => {
  if (grams <= 0) return stated(0, 0);
  if (grams <= negligible) return lessThan(negligible, 1);
  if (grams >= whole) return stated(nearest(grams, 1), 0);
  const value = nearest(grams, 0.1);
  // What rounds up to the next band is printed as that band prints it: 9.96 g is "10 g".
  return stated(value, value >= whole ? 0 : decimals);
};
