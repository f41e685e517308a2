import { partsOf, wholeGramsById } from "../larder/food-parts.ts";
import { foodById } from "../larder/foods.ts";
import { type Estimate, scaleEstimate } from "../measure/estimate.ts";
import type { Count, Grams } from "../measure/units.ts";
import type { Amount, Ingredient } from "../model/dish.ts";
import type { Measured } from "../model/menu.ts";

/** What is measured of an ingredient line, before its place on the menu is put in. */
export type Amounts = Pick<Measured, "edible" | "asPurchased" | "pieces" | "pieceName">;

const counts = (ingredient: Ingredient): Amount | null => {
  const food = ingredient.food === null ? null : foodById(ingredient.food);
  const isPiece = (unit: string | null): boolean =>
    unit === "piece" || (unit !== null && (food?.pieces.some((p) => p.name === unit) ?? false));
  const named = ingredient.amounts.find((a) => isPiece(a.unit));
  if (named !== undefined) return named;
  const counted = ingredient.gramsBasis === "pieces" || ingredient.gramsBasis === "pack";
  return counted ? (ingredient.amounts[0] ?? null) : null;
};

const pure = ({ low, likely, high }: Estimate<number>): Estimate<Count> =>
  ({ low, likely, high }) as Estimate<Count>;

/** Edible and as-purchased weight from one of them, by the food's trim. */
export const bothWeights = (
  food: string | null,
  grams: Estimate<Grams> | null,
  basis: Ingredient["weightBasis"],
): Pick<Measured, "edible" | "asPurchased"> => {
  if (grams === null) return { edible: null, asPurchased: null };
  const known = food === null ? null : foodById(food);
  const trim = known !== null && known.trim > 0 ? known.trim : 1;
  return basis === "as-purchased"
    ? { edible: scaleEstimate(grams, trim), asPurchased: grams }
    : { edible: grams, asPurchased: scaleEstimate(grams, 1 / trim) };
};

/**
 * What one line of a card asks for, as the card has it. A part of a food (yolks, juice) is counted in wholes: the
 * number on the line, or what its weight comes to; as purchased it is those wholes.
 */
export const measureIngredient = (ingredient: Ingredient): Amounts => {
  const counted = counts(ingredient);
  const pieces = counted === null ? null : pure(counted);
  const pieceName = counted === null ? null : counted.unit === "piece" ? ingredient.size : counted.unit;
  const parts = ingredient.food === null ? [] : partsOf(ingredient.food, ingredient.portion);
  const [first] = parts;
  const whole = first === undefined ? null : wholeGramsById(first.whole);
  if (first !== undefined && whole !== null) {
    const each = parts.reduce((sum, p) => sum + p.grams, 0);
    const wholes =
      pieces ??
      (ingredient.grams === null ? null : (scaleEstimate(ingredient.grams, 1 / each) as Estimate<number>));
    if (wholes !== null)
      return {
        edible:
          pieces === null
            ? ingredient.grams
            : (scaleEstimate(wholes, each) as Estimate<number> as Estimate<Grams>),
        asPurchased: scaleEstimate(wholes, whole) as Estimate<number> as Estimate<Grams>,
        pieces,
        pieceName,
      };
  }
  return { ...bothWeights(ingredient.food, ingredient.grams, ingredient.weightBasis), pieces, pieceName };
};

/** The same amounts so many times over; nothing is rounded. */
export const scaleAmounts = (amounts: Amounts, factor: number): Amounts => ({
  edible: amounts.edible === null ? null : scaleEstimate(amounts.edible, factor),
  asPurchased: amounts.asPurchased === null ? null : scaleEstimate(amounts.asPurchased, factor),
  pieces: amounts.pieces === null ? null : scaleEstimate(amounts.pieces, factor),
  pieceName: amounts.pieceName,
});
