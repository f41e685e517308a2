import { expect, it } from "vitest";
import { isEveryday } from "./everyday.ts";
import { findFood, foods } from "./foods.ts";

it("names foods of the table, none of them an allergen itself", () => {
  const own = foods.filter((food) => isEveryday(food.id));
  expect(own.map((food) => food.id)).toEqual(
    expect.arrayContaining(["salt", "black-pepper", "water", "ice", "vegetable-oil", "olive-oil"]),
  );
  expect(own.filter((food) => food.allergens.some((a) => a.grade === "certain"))).toEqual([]);
});

it.each([
  ["salt", true],
  ["pepper", true],
  ["oil", true],
  ["salt cod", false],
  ["salt beef", false],
  ["red pepper", false],
  ["sesame oil", false],
  ["walnut oil", false],
  ["coconut water", false],
])("%s: %s", (name, answer) => {
  expect(isEveryday(findFood(name)?.id ?? null)).toBe(answer);
});
