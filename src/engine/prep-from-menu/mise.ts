import { foodById } from "../larder/foods.ts";
import { techniqueById, verbReadings } from "../larder/techniques.ts";
import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Ingredient } from "../model/dish.ts";
import type { Technique } from "../model/food.ts";
import { waits } from "./kitchen-rates.ts";
import type { Work } from "./work.ts";

/** The cutting and cleaning of one line of the card, for all versions together. */
export type Mise = {
  readonly ingredient: Ingredient;
  readonly techniques: readonly Technique[];
  readonly grams: number;
  readonly minutes: { readonly low: number; readonly likely: number; readonly high: number };
  /** How long it keeps once done. */
  readonly most: number;
};

/** Mise en place that the lines of a card ask for ("peeled and diced"). */
export const miseOf = (work: Work): readonly Mise[] =>
  work.dish.ingredients.flatMap((ingredient): readonly Mise[] => {
    if (ingredient.equipment || ingredient.card !== null) return [];
    const techniques = techniquesOf(ingredient);
    if (techniques.length === 0) return [];
    const measured = work.versions.flatMap((v) =>
      v.ingredients.filter((m) => m.ingredient === ingredient.index && m.card === null),
    );
    const grams = measured.reduce((sum, m) => sum + (m.edible?.likely ?? 0), 0);
    const pieces = measured.reduce((sum, m) => sum + (m.pieces?.likely ?? 0), 0);
    if (grams === 0 && pieces === 0) return [];
    const each = techniques.map((t) => lengthOf(t, grams / 1000, pieces));
    const sum = (side: "low" | "likely" | "high"): number => each.reduce((total, e) => total + e[side], 0);
    const shelf = ingredient.food === null ? null : (foodById(ingredient.food)?.shelf ?? null);
    return [
      {
        ingredient,
        techniques,
        grams,
        minutes: { low: sum("low"), likely: sum("likely"), high: sum("high") },
        most: shelf === "fruit" ? waits.cutFruit : waits.cut,
      },
    ];
  });

const lengthOf = (technique: Technique, kilos: number, pieces: number): Mise["minutes"] => {
  const { low, likely, high } = technique.minutes;
  const amount =
    technique.law === "per-kilo"
      ? kilos
      : technique.law === "per-piece"
        ? pieces > 0
          ? pieces
          : kilos * 10
        : 1;
  const at = (rate: number): number => technique.setUp + rate * amount;
  return { low: at(low), likely: at(likely), high: at(high) };
};

/** The verbs in the words of a preparation, each once. */
const techniquesOf = (ingredient: Ingredient): readonly Technique[] => {
  const words = ingredient.preparation.flatMap((phrase) => phrase.toLowerCase().split(/[^a-zà-ÿ-]+/));
  const found = new Map<string, Technique>();
  for (const word of words) {
    // Only what has been done to it is work: "boned" is, "bone in" is not.
    const technique = verbReadings(word).find((r) => r.form === "past" && r.tail.length === 0)?.technique;
    if (technique && technique.station === "hands" && technique.heat === "none")
      found.set(technique.id, technique);
  }
  if (ingredient.portion === "juice") addTo(found, "squeeze");
  if (ingredient.portion === "zest") addTo(found, "zest");
  if (ingredient.portion === "yolk" || ingredient.portion === "white") addTo(found, "separate");
  return [...found.values()];
};

const addTo = (found: Map<string, Technique>, id: string): void => {
  const technique = techniqueById(id);
  if (technique) found.set(id, technique);
};

export const estimateOf = (m: Mise["minutes"]) => ({
  ...exactly(minutes(m.likely)),
  low: minutes(m.low),
  high: minutes(m.high),
});
