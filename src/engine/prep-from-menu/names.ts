import type { Dish, Ingredient } from "../model/dish.ts";
import type { Task } from "../model/prep.ts";
import { type Draft, totalMinutes } from "./drafts.ts";
import type { Portioned, Unit, Work } from "./work.ts";

/** Foods named on a task; more make a list nobody reads. */
const mostObjects = 3;

const rank = (unit: Unit): number => {
  const { station } = unit.action;
  if (station === "oven" || station === "grill" || station === "fryer") return 3;
  if (station === "burner") return 2;
  return station === "machine" ? 1 : 0;
};

/** The verb of the action that gives a task its name (what cooks, else what takes longest), and what it is done to. */
export const nameOf = (draft: Draft, work: Work): Pick<Task, "verb" | "objects"> => {
  const weight = (unit: Unit): number => totalMinutes(unit.segments) + rank(unit) * 5;
  const main = draft.units.reduce((a, b) => (weight(b) > weight(a) ? b : a), draft.units[0] as Unit);
  const own = foodsOf(main, work);
  const all = own.length > 0 ? own : draft.units.flatMap((unit) => foodsOf(unit, work));
  const made = draft.units.flatMap((unit) => unit.action.makes ?? []);
  const objects = all.length > 0 ? all : made.length > 0 ? made : [work.dish.title];
  return { verb: main.action.verb, objects: [...new Set(objects)].slice(0, mostObjects) };
};

/** The foods an action takes, the heaviest first, seasoning and fat for the pan last. */
const foodsOf = (unit: Unit, work: Work): readonly string[] =>
  unit.action.uses
    .flatMap((use) => (use.ingredient === null ? [] : (work.dish.ingredients[use.ingredient] ?? [])))
    .sort((a, b) => (b.grams?.likely ?? 0) - (a.grams?.likely ?? 0))
    .flatMap((ingredient) => unit.versions.flatMap((version) => served(ingredient, version, work.dish)));

/**
 * What goes in where a version swaps an ingredient out; a cook's list must never name what a guest may not have.
 * Foods that go and foods that come are paired in their order where there are as many of each.
 */
const served = (ingredient: Ingredient, version: Portioned, dish: Dish): readonly string[] => {
  const swap = version.swaps
    .flatMap((s) => dish.swaps[s] ?? [])
    .find((s) => s.out.includes(ingredient.index));
  if (swap === undefined) return [ingredient.name];
  const names = swap.comes.map((c) => c.name);
  return names.length === swap.out.length
    ? names.slice(swap.out.indexOf(ingredient.index)).slice(0, 1)
    : names;
};
