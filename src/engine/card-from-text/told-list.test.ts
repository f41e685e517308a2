import { describe, expect, it } from "vitest";
import { cardFromText } from "./card-from-text.ts";

const blocks = (text: string): readonly string[] =>
  cardFromText(text, "c").value.blocks.flatMap((b) => b.lines.map((l) => `${b.role}: ${l.text}`));

describe("a list that is told as prose", () => {
  it("is lines, one a food, and no step", () => {
    expect(
      blocks(
        "Chickpeas with sheep's cheese\n\nDoes six.\n\nFor the chickpeas it's three of water to one of chickpeas, so 300g chickpeas and 900ml water. A leek, a parsnip and a stick of celery, all diced. A good glug of rapeseed oil, couple of sprigs of rosemary, bay leaf. Then 150g sheep's cheese, a teaspoon of mustard, three of cider vinegar, handful of chervil.\n\nSweat the leek in the oil for ten minutes. Add the chickpeas and the water and simmer for an hour.\n",
      ),
    ).toEqual([
      "ingredients: 300g chickpeas",
      "ingredients: 900ml water",
      "ingredients: A leek, a parsnip and a stick of celery, all diced",
      "ingredients: A good glug of rapeseed oil",
      "ingredients: couple of sprigs of rosemary",
      "ingredients: bay leaf",
      "ingredients: 150g sheep's cheese",
      "ingredients: a teaspoon of mustard",
      "ingredients: three of cider vinegar",
      "ingredients: handful of chervil",
      "method: Sweat the leek in the oil for ten minutes. Add the chickpeas and the water and simmer for an hour.",
    ]);
  });
  it("ties an amount to the food before it, and needs no full stop where it is long", () => {
    expect(
      blocks(
        "Remoulade\n\nOne celeriac, about 700g. Mayonnaise, 150g. A tablespoon of mustard, parsley. Plenty of salt, say 20g.\n\nPeel the celeriac.\n",
      ),
    ).toEqual([
      "ingredients: One celeriac, about 700g",
      "ingredients: Mayonnaise, 150g",
      "ingredients: A tablespoon of mustard",
      "ingredients: parsley",
      "ingredients: Plenty of salt, say 20g",
      "method: Peel the celeriac.",
    ]);
    expect(
      blocks(
        "Gazpacho\n\n1kg tomatoes, half a cucumber, one red pepper, a slice of bread, 2 tbsp of vinegar, salt\n\nBlitz the lot.\n",
      ),
    ).toEqual([
      "ingredients: 1kg tomatoes",
      "ingredients: half a cucumber",
      "ingredients: one red pepper",
      "ingredients: a slice of bread",
      "ingredients: 2 tbsp of vinegar",
      "ingredients: salt",
      "method: Blitz the lot.",
    ]);
  });
  it("stands at the head of a paragraph whose rest is work", () => {
    expect(
      blocks(
        "Beetroot salad, enough for six\n\nThree big beetroots, juice of an orange, two tablespoons of yoghurt, salt, black pepper, chopped dill if there's any. Grate the beetroots and get the orange on them. Stir in the yoghurt, season, and leave it ten minutes.\n",
      ),
    ).toEqual([
      "ingredients: Three big beetroots",
      "ingredients: juice of an orange",
      "ingredients: two tablespoons of yoghurt",
      "ingredients: salt",
      "ingredients: black pepper",
      "ingredients: chopped dill if there's any",
      "method: Grate the beetroots and get the orange on them. Stir in the yoghurt, season, and leave it ten minutes.",
    ]);
  });
  it.each([
    "Onions, celery and two carrots into the pan, ten minutes till soft. Add the stock.",
    "Meanwhile, the oil, the vinegar and two spoons of mustard go in a jar. Shake it.",
  ])("is no list when it orders work: %s", (line) => {
    const text = `Soup\n\n2 onions\n2 carrots\n\n${line}\n`;
    expect(blocks(text).filter((b) => b.startsWith("ingredients"))).toEqual([
      "ingredients: 2 onions",
      "ingredients: 2 carrots",
    ]);
  });
});
