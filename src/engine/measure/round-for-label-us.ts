import { type LabelFigure, lessThan, nearest, stated } from "./label-figure.ts";

/*
 * Rounding of US nutrition facts, 21 CFR 101.9(c), as FDA's Food Labeling Guide, Appendix H, tabulates it. The band is
 * chosen by the amount before rounding. Ties go up.
 */

/** Calories: nothing below 5, then to 5 up to 50, then to 10. */
export const roundCaloriesForLabelUs = (kilocalories: number): LabelFigure => {
  if (kilocalories < 5) return stated(0, 0);
  return stated(nearest(kilocalories, kilocalories <= 50 ? 5 : 10), 0);
};

/** Total, saturated, trans and unsaturated fat, grams: nothing below 0.5, then to 0.5 below 5, then to 1. */
export const roundFatForLabelUs = (grams: number): LabelFigure => {
  if (grams < 0.5) return stated(0, 0);
  if (grams >= 5) return stated(nearest(grams, 1), 0);
  const value = nearest(grams, 0.5);
  return stated(value, Number.isInteger(value) ? 0 : 1);
};

/** Sodium, milligrams. */
export const roundSodiumForLabelUs = (milligrams: number): LabelFigure => {
  if (milligrams < 5) return stated(0, 0);
  return stated(nearest(milligrams, milligrams <= 140 ? 5 : 10), 0);
};

/** Total carbohydrate, fibre, sugars and protein, grams. */
export const roundMassForLabelUs = (grams: number): LabelFigure => {
  if (grams < 0.5) return stated(0, 0);
  return grams < 1 ? lessThan(1, 0) : stated(nearest(grams, 1), 0);
};
