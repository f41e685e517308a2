import { expect, it } from "vitest";
import { cardFromText } from "#engine/card-from-text/card-from-text.ts";
import { readIngredients } from "#engine/dish-from-card/lines/read-ingredients.ts";

const amounts = (list: string): readonly (string | null)[] => {
  const card = cardFromText(
    `Dressed leeks\n\nServes 4\n\nEight leeks, trimmed. ${list}.\n\nSteam the leeks for 10 minutes. Whisk the rest and pour over.\n`,
    "c",
  ).value;
  return readIngredients(card, "uk")
    .ingredients.slice(1)
    .map((i) => `${i.amounts[0]?.likely} ${i.amounts[0]?.unit} ${i.name}`);
};

it.each([
  [
    "A teaspoon of mustard, three of cider vinegar, five of rapeseed oil",
    ["1 tsp mustard", "3 tsp cider vinegar", "5 tsp rapeseed oil"],
  ],
  ["100ml cream, two of the eggs, 20g dill", ["100 ml cream", "2 piece eggs", "20 g dill"]],
])("a number behind a spoon counts that spoon: %s", (list, expected) => {
  expect(amounts(list)).toEqual(expected);
});
