import { firstOfFoodNames, foodById, foodByName } from "../../larder/foods.ts";
import type { Food, FoodId } from "../../model/food.ts";
import type { Token } from "../steps/tokens.ts";

/** A name of a food in the words of a step, by its tokens. */
export type Hit = { readonly food: Food; readonly from: number; readonly to: number };

/** Every name of a food that begins somewhere in a step. */
export const foodsIn = (tokens: readonly Token[]): readonly Hit[] => {
  const found: Hit[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    const hit = foodAt(tokens, i);
    if (hit !== null) found.push(hit);
  }
  return found;
};

const mostWords = 4;

/** The longest name of a food that begins at a token; null when none does. */
export const foodAt = (tokens: readonly Token[], i: number): Hit | null => {
  const first = tokens[i]?.text ?? "";
  // Most words of a method begin no food's name, and need no search.
  const most = first.includes("-") ? mostWords : Math.min(mostWords, firstOfFoodNames.get(first) ?? 0);
  let key = "";
  let id: FoodId | null = null;
  let to = i;
  for (let n = 0; n < most; n += 1) {
    const token = tokens[i + n];
    if (token === undefined || token.kind !== "word") break;
    const said = token.text.includes("-") ? token.text.replaceAll("-", " ") : token.text;
    key = n === 0 ? said : `${key} ${said}`;
    const named = foodByName.get(key);
    if (named !== undefined) [id, to] = [named, i + n + 1];
  }
  const food = id === null ? null : foodById(id);
  return food === null ? null : { food, from: i, to };
};
