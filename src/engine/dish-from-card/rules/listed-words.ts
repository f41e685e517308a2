import { nearFoods } from "../../larder/foods.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import type { FoodId } from "../../model/food.ts";
import { stem } from "../steps/stem.ts";

const stemsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((w) => w.length > 2)
    .map(stem);

const methodHeading = /^\W*(?:method|directions|instructions|preparation|steps)\W*$/im;

// Words of a line that has no figure, from which on it is talk.
const talk = 6;

const keptWords = new WeakMap<Dish, ReadonlySet<string>>();

/**
 * Stemmed words that stand in the list, from its first line to the first step, outside the lines that were read as foods
 * of the table: what was read otherwise may still be meant.
 */
export const listedWords = (dish: Dish): ReadonlySet<string> => {
  const known = keptWords.get(dish);
  if (known !== undefined) return known;
  const from = Math.min(...dish.ingredients.map((i) => i.span.start), dish.text.length);
  const heading = dish.text.slice(from).search(methodHeading);
  const to =
    heading >= 0
      ? from + heading
      : Math.min(...dish.steps.map((s) => s.span.start).filter((at) => at > from), dish.text.length);
  // Lines that were read as foods of the table are blotted out.
  let text = "";
  let at = from;
  for (const { food, span } of dish.ingredients.toSorted((a, b) => a.span.start - b.span.start)) {
    if (food === null || span.end > to || span.end <= at) continue;
    const start = Math.max(at, span.start);
    text += dish.text.slice(at, start) + " ".repeat(span.end - start);
    at = span.end;
  }
  text += dish.text.slice(at, to);
  // Talk between the lines ("It's three of milk to one of cream") lists nothing.
  const lines = text.split("\n").filter((line) => /\d/.test(line) || line.trim().split(/\s+/).length < talk);
  const words = new Set(stemsOf(lines.join("\n")));
  keptWords.set(dish, words);
  return words;
};

// How many of the likest names a slip of the pen may have meant.
const likest = 2;

const keptNear = new WeakMap<Dish, ReadonlyMap<FoodId, readonly number[]>>();

/** Foods that a listed name may mean that is in no table ("gerkins"), with the lines so written. */
export const nearlyListed = (dish: Dish): ReadonlyMap<FoodId, readonly number[]> => {
  const known = keptNear.get(dish);
  if (known !== undefined) return known;
  const found = new Map<FoodId, number[]>();
  const put = (i: Ingredient): void => {
    for (const food of nearFoods(i.name, likest))
      found.set(food.id, [...(found.get(food.id) ?? []), i.index]);
  };
  for (const i of dish.ingredients) if (i.food === null && !i.equipment && i.name.length > 3) put(i);
  keptNear.set(dish, found);
  return found;
};
