import { describe, expect, it } from "vitest";
import { sitting } from "../../../test/help/dishes.ts";
import { minutes } from "../measure/units.ts";
import type { KitchenRate } from "../model/sitting.ts";
import { techniqueById } from "./techniques.ts";
import { handRate, rateNamed } from "./work-rates.ts";

const { kitchen } = sitting([], 1);
const withRates = (...rates: readonly KitchenRate[]) => ({ ...kitchen, rates });
const peel = techniqueById("peel")!;
const own = (food: string | null, each: number): KitchenRate => ({
  technique: "peel",
  food,
  per: "kilo",
  minutes: minutes(each),
});

describe("the rate of hand work", () => {
  it.each([
    ["the table's for the food", "potato", kitchen, 5.5, "food"],
    ["the usual one for another food", "beetroot", kitchen, peel.minutes.likely, "technique"],
    ["the kitchen's own for the work", "beetroot", withRates(own(null, 9)), 9, "kitchen"],
    [
      "the kitchen's own for the food first",
      "potato",
      withRates(own(null, 9), own("potato", 3)),
      3,
      "kitchen",
    ],
    ["not another food's own", "carrot", withRates(own("potato", 3)), 6, "food"],
  ] as const)("is %s", (_, food, place, likely, from) => {
    const rate = handRate(peel, food, place)!;
    expect([rate.minutes.likely, rate.from]).toEqual([likely, from]);
    expect(rate.minutes.low).toBeLessThanOrEqual(rate.minutes.likely);
    expect(rate.minutes.high).toBeGreaterThanOrEqual(rate.minutes.likely);
  });

  it("is none for work that is not counted", () => {
    expect(handRate(techniqueById("simmer")!, "potato", kitchen)).toBeNull();
  });

  it.each([
    ["peeling", "potatoes", "peel", "potato", true],
    ["dice", null, "dice", null, true],
    ["frobnicate", "potatoes", null, "potato", true],
    ["peel", "moonlight", "peel", null, false],
  ] as const)("of %s %s is read from words", (work, food, technique, row, known) => {
    expect(rateNamed(work, food)).toEqual({ technique, food: row, known });
  });
});
