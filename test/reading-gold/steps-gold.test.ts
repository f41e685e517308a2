import { describe, expect, it } from "vitest";
import { goldDishes } from "./steps-gold.ts";
import { kinds, scoreSteps } from "./steps-score.ts";

const folder = `${new URL(".", import.meta.url).pathname}working/`;
const dishes = ["steps.txt", "steps-more.txt", "steps-third.txt", "steps-fourth.txt"].flatMap((file) =>
  goldDishes(folder + file),
);
const score = scoreSteps(dishes);

/** Least share read right, in percent: what the reader reached, so that no change makes it worse unseen. */
const floor: Readonly<Record<(typeof kinds)[number], number>> = {
  technique: 99,
  time: 99,
  temperature: 99,
  place: 99,
  uses: 96,
  held: 92,
  details: 98,
};

describe("steps of dishes that the reader was tuned on", () => {
  it("holds enough of them to count", () => {
    expect(dishes.reduce((sum, d) => sum + d.actions.length, 0)).toBeGreaterThan(150);
  });

  it.each(kinds)("reads %s as well as it did", (kind) => {
    expect((100 * score.right[kind]) / score.of[kind]).toBeGreaterThanOrEqual(floor[kind]);
  });
});
