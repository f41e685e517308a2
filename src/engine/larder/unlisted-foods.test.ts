import { describe, expect, it } from "vitest";
import { dish, line } from "../../../test/help/made-menu.ts";
import type { Ingredient, Step } from "../model/dish.ts";
import { unlistedFoods } from "./unlisted-foods.ts";

const says = (text: string, lines: readonly Ingredient[], phase: Step["phase"] = "method") => {
  const made = dish("soup", lines);
  const step = { index: 0, text, span: { start: 0, end: text.length }, part: null, phase, actions: [] };
  return unlistedFoods({ ...made, text, steps: [step] }).map((u) => [
    u.food.id,
    text.slice(u.span.start, u.span.end),
  ]);
};

const leeks = [line(0, "leeks", "leek", 300)];

describe("foods that only the method names", () => {
  it("finds them, at their place", () => {
    expect(says("Melt a good knob of butter and sweat the leeks.", leeks)).toEqual([
      ["unsalted-butter", "butter"],
    ]);
    expect(says("Dust the bench with plain flour.", leeks)).toEqual([["plain-flour", "plain flour"]]);
  });

  it("says nothing of what holds no allergen and no diet fact", () => {
    expect(says("Add the carrots.", leeks)).toEqual([]);
  });

  it("passes over a listed food by any of its words", () => {
    const cream = [line(0, "double cream", "double-cream", 300)];
    expect(says("Stir in the cream.", cream)).toEqual([]);
    const cheese = [line(0, "Comté", "comte", 300)];
    expect(says("Grate the cheese over.", cheese)).toEqual([]);
  });

  it("takes verbs for verbs", () => {
    expect(says("Cream the leeks together, roll up and mince finely.", leeks)).toEqual([]);
  });

  it("passes over what the method makes, and not over what is added at the pass", () => {
    expect(says("Turn the custard into a bowl.", leeks)).toEqual([]);
    expect(says("Serve with custard.", leeks, "to-serve").map(([id]) => id)).toEqual(["custard"]);
  });
});
