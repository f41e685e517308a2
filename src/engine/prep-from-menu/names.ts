import type { Dish, Ingredient } from "../model/dish.ts";
import type { Task } from "../model/prep.ts";
import { attendedMinutes, type Draft, totalMinutes } from "./drafts.ts";
import type { Portioned, Unit, Work } from "./work.ts";

/** Foods named on a task; more make a list nobody reads. */
const mostObjects = 3;

/** What weighs less than this part of the main food, such as the fat that it browns in, does not name the work. */
const leastOfMain = 0.02;

/** Work that only readies or keeps: it names a task that has nothing else in it. */
const beside: ReadonlySet<string> = new Set(["preheat", "adjust-heat", "keep-warm", "warm-plates"]);

/** How much a unit is what its task is about: what cooks before what takes hands, and what only stands last. */
const weightOf = (unit: Unit): number => {
  if (beside.has(unit.technique?.id ?? "")) return -1;
  const r = rank(unit);
  return r > 0 ? totalMinutes(unit.segments) + r * 5 : attendedMinutes(unit.segments);
};

const rank = (unit: Unit): number => {
  const { station } = unit.action;
  if (station === "oven" || station === "grill" || station === "fryer") return 3;
  if (station === "burner") return 2;
  return station === "machine" ? 1 : 0;
};

/**
 * The verb of the action that gives a task its name (what cooks, else what takes longest), and what it is done to:
 * the foods that went in by then, or the part or the dish when those are the least of it.
 */
export const nameOf = (draft: Draft, work: Work): Pick<Task, "verb" | "objects"> => {
  const main = draft.units.reduce((a, b) => (weightOf(b) > weightOf(a) ? b : a), draft.units[0] as Unit);
  const foods = draft.units
    .slice(0, draft.units.indexOf(main) + 1)
    .flatMap((unit) => foodsOf(unit, work))
    .sort((a, b) => b.grams - a.grams);
  const kilos = foods.reduce((sum, food) => sum + (food.grams * main.factor) / 1000, 0);
  const heaviest = foods[0]?.grams ?? 0;
  const most = foods.length > 0 && kilos >= main.kilos / 2;
  const objects = most
    ? foods.filter((f) => f.grams >= heaviest * leastOfMain).flatMap((food) => food.names)
    : [main.step.part ?? work.dish.title];
  return { verb: verbOf(main), objects: [...new Set(objects)].slice(0, mostObjects) };
};

/** The cook's own verb, or what is really done where the words only put a thing somewhere: "put back" that simmers. */
const verbOf = ({ action, technique }: Unit): string => {
  const own = technique?.verbs ?? [];
  return placing.test(action.verb) && !own.includes(action.verb) ? (own[0] ?? action.verb) : action.verb;
};

const placing =
  /^(put|put back|return|give|go|go in|get|take|whack|stick|bung|pop|slide|shove|throw|leave|set|cover|add|turn|back)\b/;

/** The foods an action takes, with what their line weighs on the card. */
const foodsOf = (
  unit: Unit,
  work: Work,
): readonly { readonly names: readonly string[]; readonly grams: number }[] =>
  unit.action.uses
    .flatMap((use) => work.dish.ingredients[use.ingredient ?? use.named ?? -1] ?? [])
    .map((ingredient) => ({
      names: unit.versions.flatMap((version) => served(ingredient, version, work.dish)),
      grams: ingredient.grams?.likely ?? 0,
    }));

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
