import { partGrams, partsOf, pieceGrams } from "../larder/food-parts.ts";
import { foodById } from "../larder/foods.ts";
import { type Estimate, scaleEstimate } from "../measure/estimate.ts";
import { asPurchasedFor, edibleOf } from "../measure/trim.ts";
import { type Count, type Grams, grams } from "../measure/units.ts";
import type { Amount, Ingredient } from "../model/dish.ts";
import type { Measured } from "../model/menu.ts";
import type { Region } from "../model/sitting.ts";

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

const weigh = ({ low, likely, high }: Estimate<Count>, each: number): Estimate<Grams> => ({
  low: grams(low * each),
  likely: grams(likely * each),
  high: grams(high * each),
});

/** Edible and as-purchased weight from one of them, by the food's trim. */
export const bothWeights = (
  food: string | null,
  weight: Estimate<Grams> | null,
  basis: Ingredient["weightBasis"],
): Pick<Measured, "edible" | "asPurchased"> => {
  if (weight === null) return { edible: null, asPurchased: null };
  const known = food === null ? null : foodById(food);
  const trim = known?.trim ?? 1;
  return basis === "as-purchased"
    ? { edible: edibleOf(weight, trim), asPurchased: weight }
    : { edible: weight, asPurchased: asPurchasedFor(weight, trim) };
};

// A part of a food is counted in wholes: the number on the line, or what its weight comes to.
const measurePart = (
  ingredient: Ingredient,
  pieces: Estimate<Count> | null,
  region: Region,
): Pick<Measured, "edible" | "asPurchased"> | null => {
  const parts = ingredient.food === null ? [] : partsOf(ingredient.food, ingredient.portion);
  const [first] = parts;
  const food = first === undefined ? null : foodById(first.whole);
  const whole = food === null ? null : pieceGrams(food, region);
  const each = parts.reduce((sum, p) => sum + (partGrams(p, region) ?? 0), 0);
  if (whole === null || each <= 0) return null;
  if (pieces !== null) return { edible: weigh(pieces, each), asPurchased: weigh(pieces, whole) };
  if (ingredient.grams === null) return null;
  return { edible: ingredient.grams, asPurchased: scaleEstimate(ingredient.grams, whole / each) };
};

/**
 * What one line of a card asks for, as the card has it. As purchased, a part of a food (yolks, juice) is the wholes
 * that give it.
 */
export const measureIngredient = (ingredient: Ingredient, region: Region): Amounts => {
  const counted = counts(ingredient);
  const pieces = counted === null ? null : { low: counted.low, likely: counted.likely, high: counted.high };
  const pieceName = counted === null ? null : counted.unit === "piece" ? ingredient.size : counted.unit;
  const asCount = pieces as Estimate<Count> | null;
  const weights =
    measurePart(ingredient, asCount, region) ??
    bothWeights(ingredient.food, ingredient.grams, ingredient.weightBasis);
  return { ...weights, pieces: asCount, pieceName };
};

/** The same amounts so many times over; nothing is rounded. */
export const scaleAmounts = (amounts: Amounts, factor: number): Amounts => ({
  edible: amounts.edible === null ? null : scaleEstimate(amounts.edible, factor),
  asPurchased: amounts.asPurchased === null ? null : scaleEstimate(amounts.asPurchased, factor),
  pieces: amounts.pieces === null ? null : scaleEstimate(amounts.pieces, factor),
  pieceName: amounts.pieceName,
});
