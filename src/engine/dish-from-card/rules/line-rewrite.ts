import type { Edit } from "../../findings/finding.ts";
import { roundForScales } from "../../measure/rounding.ts";
import type { Ingredient } from "../../model/dish.ts";

/** Writes a line anew with a weight: what stands before the name goes, the name and what follows it stays. */
export const withGrams = (i: Ingredient, grams: number): Edit => ({
  span: { start: i.span.start, end: i.nameSpan.start },
  text: `${roundForScales(grams)} g `,
});
