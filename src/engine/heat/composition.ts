import { foodById } from "../larder/foods.ts";
import { type Share, share } from "../measure/units.ts";
import type { Food, FoodId } from "../model/food.ts";
import { type Component, components } from "./component-properties.ts";

/** Mass fractions that add up to one. */
export type Composition = { readonly [C in Component]: number };

/** What stands in a vessel: a food and its grams; null where the words were not understood. */
export type Content = { readonly food: FoodId | null; readonly grams: number };

const nothing: Composition = {
  water: 0,
  ice: 0,
  protein: 0,
  fat: 0,
  carbohydrate: 0,
  fibre: 0,
  ash: 0,
  alcohol: 0,
};

/** A composition from parts of any sum, each taken as not below zero; null when there is nothing at all. */
export const compositionFrom = (parts: Partial<Composition>): Composition | null => {
  const whole = { ...nothing };
  let sum = 0;
  for (const component of components) {
    whole[component] = Math.max(0, parts[component] ?? 0);
    sum += whole[component];
  }
  if (!(sum > 0)) return null;
  for (const component of components) whole[component] /= sum;
  return whole;
};

/** A moist food of which nothing is known: three quarters water. Common practice, no source. */
export const moistFood: Composition = {
  ...nothing,
  water: 0.75,
  protein: 0.1,
  fat: 0.05,
  carbohydrate: 0.08,
  fibre: 0.01,
  ash: 0.01,
};

/** A food's composition from its row of the food table; null when the row does not know its water. */
export const compositionOf = (food: Food): Composition | null => {
  const { water, protein, fat, carbohydrate, fibre, ash, alcohol } = food.nutrients;
  if (water === null) return null;
  return compositionFrom({
    water,
    protein: protein ?? 0,
    fat: fat ?? 0,
    // The table's carbohydrate is by difference, with the fibre and any alcohol in it.
    carbohydrate: (carbohydrate ?? 0) - (fibre ?? 0) - (alcohol ?? 0),
    fibre: fibre ?? 0,
    ash: ash ?? 0,
    alcohol: alcohol ?? 0,
  });
};

/** What is in the vessel, mixed by mass, and the share of the mass whose composition the food table knows. */
export type Mixture = { readonly composition: Composition; readonly known: Share };

/** Mixes what is in a vessel by mass; what the food table does not know counts as a moist food. */
export const mixtureOf = (contents: readonly Content[]): Mixture => {
  const sums = { ...nothing };
  let all = 0;
  let known = 0;
  for (const { food, grams } of contents) {
    if (!(grams > 0)) continue;
    const row = food === null ? null : foodById(food);
    const own = row === null ? null : compositionOf(row);
    for (const component of components) sums[component] += grams * (own ?? moistFood)[component];
    all += grams;
    if (own !== null) known += grams;
  }
  return { composition: compositionFrom(sums) ?? moistFood, known: share(all > 0 ? known / all : 0) };
};
