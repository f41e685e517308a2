import { foodById } from "../../larder/foods.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";

/** The likely grams of a line; 0 when they are not known. */
export const gramsOf = (i: Ingredient): number => i.grams?.likely ?? 0;

/** Grams of all lines whose food a test takes, in one part of the dish or, with null, in all of it. */
export const gramsWhere = (dish: Dish, takes: (i: Ingredient) => boolean): number =>
  dish.ingredients.filter(takes).reduce((sum, i) => sum + gramsOf(i), 0);

/** True for a line of a food by its id or, as a pattern, its name. */
export const isFood =
  (name: RegExp) =>
  (i: Ingredient): boolean =>
    name.test(i.food === null ? i.name : (foodById(i.food)?.name ?? i.name));

/** Flour that gives a dough or a batter its body. */
export const isFlour = isFood(/\bflour\b/i);
