import { describe, expect, it } from "vitest";
import { bareAction, nowhere } from "../../../test/help/bare.ts";
import { dish, ingredient, sitting } from "../../../test/help/dishes.ts";
import { count, share } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import { countBatches } from "./count-batches.ts";
import { kitchenWork } from "./kitchen-work.ts";

const action = (
  id: string,
  technique: string,
  station: Action["station"],
  more: Partial<Action> = {},
): Action =>
  bareAction(id, technique, {
    uses: [{ ingredient: 0, product: null, share: share(1), implied: false, span: nowhere }],
    station,
    ...more,
  });
const kitchen = sitting([], 1).kitchen;
const batches = (actions: readonly Action[], grams: number, factor = 1, food = "water") =>
  countBatches(
    kitchenWork(
      dish("d", 4, [ingredient(0, food, grams)], {
        steps: [{ index: 0, text: "", span: nowhere, part: null, phase: "method", actions }],
      }),
      factor,
      new Map(),
      kitchen,
    ),
    "as-written",
  ).map((b) => [b.action, b.batches, b.because]);

describe("countBatches", () => {
  it.each([
    ["fits the largest pan", [action("a", "boil", "burner")], 6000, 1, []],
    ["more than a pan holds", [action("a", "boil", "burner")], 14_000, 1, [["a", 3, "pan-volume"]]],
    ["one layer holds less", [action("a", "sear", "burner")], 6000, 1, [["a", 6, "pan-volume"]]],
    [
      "the card's own batches grow with the amount",
      [action("a", "sear", "burner", { batches: count(2) })],
      10,
      3,
      [["a", 6, "card-says"]],
    ],
    ["trays and shelves", [action("a", "roast", "oven")], 10_000, 1, [["a", 2, "oven-shelves"]]],
    ["handwork has no batches", [action("a", "peel", "hands")], 90_000, 1, []],
    [
      "what an earlier action made is counted",
      [
        action("a", "peel", "hands"),
        action("b", "boil", "burner", {
          uses: [{ ingredient: null, product: "a", share: share(0.5), implied: false, span: nowhere }],
        }),
      ],
      14_000,
      1,
      [["b", 2, "pan-volume"]],
    ],
  ] as const)("%s", (_, actions, grams, factor, expected) => {
    expect(batches(actions, grams, factor)).toEqual(expected);
  });

  it("reads volume by density: leaves fill a pan sooner than water", () => {
    expect(batches([action("a", "boil", "burner")], 6000, 1, "spinach").length).toBe(1);
  });
});
