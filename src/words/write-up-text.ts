import type { LabelFigure, LabelRow, WriteUp } from "#engine/index.ts";
import { numberText } from "./number-text.ts";
import { durationText } from "./quantity-text.ts";

/** Headings of a printed card. */
export const writeUpHeadings = {
  ingredients: "Ingredients",
  method: "Method",
  toServe: "To serve",
  keeping: "Keeping",
  swaps: "Swaps",
  allergens: "Allergens",
  cautions: "Cautions",
  nutrition: "Nutrition",
} as const;

/** "For the pastry", over the ingredients or the steps of a part. */
export const partHeading = (part: string): string => `For the ${part}`;

/** How many the card feeds, in its own words where it has them. */
export const yieldLine = (writeUp: WriteUp): string | null => {
  if (writeUp.yieldText !== null) return writeUp.yieldText;
  return writeUp.portions === null ? null : `Serves ${numberText(writeUp.portions.likely, 1)}`;
};

/** The times of a card, as near as its words allow. */
export const timeLine = ({ handsMinutes, totalMinutes }: WriteUp): string | null => {
  const hands =
    handsMinutes === null || handsMinutes === 0 ? null : `about ${durationText(handsMinutes)} of work`;
  const total =
    totalMinutes === null || totalMinutes === 0 ? null : `about ${durationText(totalMinutes)} in all`;
  return [hands, total].filter((t) => t !== null).join(", ") || null;
};

/** Marks a line that may be left out. */
export const optionalMark = "(optional)";

/** Over the groups that the words name. */
export const containsLabel = "Contains";
/** Over the groups that only a label can settle. */
export const notConfirmedLabel = "Not confirmed, read the label";
/** Over what was not understood. */
export const couldHoldLabel = "Not understood, could hold anything";
/** When no group was found. */
export const noneFound = "No listed allergen was found in the words of this card.";

/** Energy of one portion. */
export const energyLine = (kilocalories: number): string =>
  `About ${numberText(kilocalories)} kcal a portion, reckoned from raw weights.`;

/** A figure as a label prints it: "12", "0.5", "<0.5", and "at least" before one that leaves something out. */
export const labelFigureText = ({ value, decimals, below }: LabelFigure, complete = true): string =>
  `${complete ? "" : "at least "}${below ? "<" : ""}${value.toFixed(decimals)}`;

/** Names of the lines of a nutrition table. */
export const nutrientLabels: { readonly [N in LabelRow["nutrient"]]: string } = {
  kilojoules: "Energy",
  kilocalories: "Energy",
  fat: "Fat",
  saturates: "of which saturates",
  carbohydrate: "Carbohydrate",
  totalCarbohydrate: "Total carbohydrate",
  sugars: "of which sugars",
  fibre: "Fibre",
  protein: "Protein",
  salt: "Salt",
  sodium: "Sodium",
};
