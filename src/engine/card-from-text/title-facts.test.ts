import { expect, it } from "vitest";
import { cardFromText } from "./card-from-text.ts";

it.each([
  ["Vegetable stock. Yield 4 L", "Vegetable stock", ["Yield 4 L"]],
  ["Lemon tart (23cm tin, 12 slices)", "Lemon tart", ["23cm tin", "12 slices"]],
  ["Flapjacks [24 squares]", "Flapjacks", ["24 squares"]],
  ["Plum cake (a 20 cm round tin)", "Plum cake", ["a 20 cm round tin"]],
  ["Lamb. Serves 4", "Lamb", ["Serves 4"]],
  ["Lemon curd, about 3 jars", "Lemon curd", ["about 3 jars"]],
  ["Choux buns, about 30 of them", "Choux buns", ["about 30 of them"]],
  ["Sticky thighs, does 12, two each", "Sticky thighs", ["does 12, two each"]],
  ["Confit duck for 8, two parts salt to one of sugar", "Confit duck", ["for 8"]],
  [
    "Braised lentils the way we like them, two of stock to one of lentils, does 8 as a side",
    "Braised lentils the way we like them, two of stock to one of lentils",
    ["does 8 as a side"],
  ],
  ["Trifle (my aunt's)", "Trifle (my aunt's)", []],
  ["Tart (23cm tin, no soggy base)", "Tart (23cm tin, no soggy base)", []],
])("a title without what stands behind it: %s", (line, title, yields) => {
  const card = cardFromText(`${line}\n\nIngredients\n2 eggs\n\nMethod\nBeat the eggs.\n`, "c").value;
  expect(card.title?.text).toBe(title);
  expect(card.yields.map((y) => y.text)).toEqual(yields);
});

it.each([
  ["Does five as a starter.", ["Does five as a starter"]],
  ["Does 14 slices", ["Does 14 slices"]],
  ["Makes about a litre", ["Makes about a litre"]],
  ["Makes one 20cm pie, cuts into 6", ["Makes one 20cm pie", "cuts into 6"]],
  ["Does things to a leek.", []],
])("a yield on the line below the title: %s", (line, yields) => {
  const card = cardFromText(`Pea tart\n${line}\n\n2 eggs\n200 g peas\n\nBeat the eggs.\n`, "c").value;
  expect(card.yields.map((y) => y.text)).toEqual(yields);
});

it("amounts behind the names, with what is done to them, are a list", () => {
  const card = cardFromText(
    "Sausage pot, feeds 10\n\nPork sausages 20\nOnions 4, sliced\nHaricot beans 2 tins, drained\n\nBrown the sausages for 10 minutes.\n",
    "c",
  ).value;
  expect(card.blocks[0]?.role).toBe("ingredients");
  expect(card.blocks[0]?.lines.length).toBe(3);
});
