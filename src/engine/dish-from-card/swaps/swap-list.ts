import { substanceAgainstNeed } from "../../larder/against-need.ts";
import { foodById } from "../../larder/foods.ts";
import type { Ingredient } from "../../model/dish.ts";
import type { Need } from "../../model/need.ts";
import type { Region } from "../../model/sitting.ts";
import { type ClassIndex, classAt, classIndexOf } from "../steps/class-words.ts";
import { findMentions } from "../steps/find-mentions.ts";
import { type NameIndex, nameIndexOf } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import { tokenise } from "../steps/tokens.ts";

/** A card's ingredients, ready to be looked up by the words of a swap. */
export type SwapList = {
  readonly ingredients: readonly Ingredient[];
  readonly names: NameIndex;
  readonly classes: ClassIndex;
  readonly region: Region;
};

/** Prepares the ingredients of a card for its swaps. */
export const swapListOf = (ingredients: readonly Ingredient[], region: Region): SwapList => ({
  ingredients,
  names: nameIndexOf(ingredients),
  classes: classIndexOf(ingredients),
  region,
});

/** Every line that these words mean; all lines of one name, since a swap takes the food out of the whole dish. */
export const linesMeant = (list: SwapList, words: string): readonly number[] => {
  const tokens = tokenise(words);
  const found = new Set<number>();
  for (const mention of findMentions(tokens, 0, tokens.length, list.names, () => false)) {
    const top = mention.candidates[0]?.strength ?? 0;
    for (const c of mention.candidates) if (c.strength >= top - 0.05) found.add(c.ingredient);
  }
  if (found.size === 0)
    for (let i = 0; i < tokens.length; i += 1)
      for (const m of classAt(tokens, i, list.classes, () => [], stem)?.members ?? []) found.add(m);
  return [...found].sort((a, b) => a - b);
};

/** Every line whose food stands against one of the needs. */
export const linesAgainst = (list: SwapList, needs: readonly Need[]): readonly number[] =>
  list.ingredients
    .filter((i) => {
      const food = i.food === null ? null : foodById(i.food);
      return (
        food !== null &&
        needs.some((need) => /^(certain|typical)$/.test(substanceAgainstNeed(food, need) ?? ""))
      );
    })
    .map((i) => i.index);
