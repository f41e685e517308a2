import { addEstimates, type Estimate, scaleEstimate } from "../measure/estimate.ts";
import { type Grams, grams } from "../measure/units.ts";
import type { Dish, Swap } from "../model/dish.ts";
import { shareByWeight } from "./card-share.ts";
import type { Line, LineBook } from "./dish-lines.ts";
import type { DishFinder } from "./find-dish.ts";
import { bothWeights } from "./measure-ingredient.ts";

const nothing: Estimate<Grams> = { low: grams(0), likely: grams(0), high: grams(0) };

// What goes, by weight on the line itself; a line that uses a card weighs what it says, not what its card takes in.
const weightOf = (dish: Dish, place: number): Estimate<Grams> =>
  dish.ingredients.find((i) => i.index === place)?.grams ?? nothing;

/**
 * "The same weight": of its counterpart when as many come as go, otherwise an equal part of all that goes. Null when
 * the weight of what goes is not known.
 */
const sameWeight = (dish: Dish, swap: Swap, place: number): Estimate<Grams> | null => {
  const gone = swap.out.map((i) => weightOf(dish, i));
  const paired = swap.comes.length === swap.out.length ? gone[place] : undefined;
  const weight = paired ?? scaleEstimate(gone.reduce(addEstimates, nothing), 1 / swap.comes.length);
  return weight.high > 0 ? weight : null;
};

const comesAs = (
  dish: Dish,
  swap: Swap,
  place: number,
  book: LineBook,
  finder: DishFinder,
): readonly Line[] => {
  const comes = swap.comes[place];
  if (comes === undefined) return [];
  const weight = comes.grams ?? sameWeight(dish, swap, place);
  const made = finder.byTitle(comes.name);
  if (made !== null && made.source !== dish.source && weight !== null) {
    const use = { made, factor: shareByWeight(weight.likely, comes.food, made).factor };
    return [{ ingredient: null, name: comes.name, foods: book.bring(use, null), use }];
  }
  const food = {
    ingredient: null,
    card: null,
    cardIngredient: null,
    food: comes.food,
    name: comes.name,
    portion: null,
    optional: false,
    ...bothWeights(comes.food, weight, "edible-portion"),
    pieces: null,
    pieceName: null,
    adjusted: [],
  };
  return [{ ingredient: null, name: comes.name, foods: [food], use: null }];
};

/** The lines of a dish with these swaps made: what goes is left out, what comes stands at the end. */
export const swapLines = (
  dish: Dish,
  swaps: readonly number[],
  book: LineBook,
  finder: DishFinder,
): readonly Line[] => {
  const made = swaps.flatMap((s) => dish.swaps[s] ?? []);
  const gone = new Set(made.flatMap((swap) => swap.out));
  return [
    ...book.linesOf(dish).filter((line) => line.ingredient === null || !gone.has(line.ingredient)),
    ...made.flatMap((swap) => swap.comes.flatMap((_, place) => comesAs(dish, swap, place, book, finder))),
  ];
};

/** Does a swap take out a place that another of these takes out too? Such swaps cannot both be made. */
export const clash = (dish: Dish, swaps: readonly number[]): boolean => {
  const out = swaps.flatMap((s) => dish.swaps[s]?.out ?? []);
  return new Set(out).size < out.length;
};
