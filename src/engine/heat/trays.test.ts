import { expect, it } from "vitest";
import { grams } from "../measure/units.ts";
import { piecesATray } from "./trays.ts";

// A GN 1/1 tray is 530 × 325 mm (EN 631-1); how many lie on it is common practice, no source.
it.each([
  ["a chicken", 1600, 4],
  ["a rib for eight", 3000, 3],
  ["a small turkey", 6000, 2],
  ["a large turkey", 10_000, 1],
  ["a whole leg of pork", 14_000, 1],
])("%s of %s g: %s a tray", (_, weight, many) => {
  expect(piecesATray(grams(weight))).toBe(many);
});

it("is never more for a heavier piece, and never none", () => {
  let before = Number.POSITIVE_INFINITY;
  for (let weight = 100; weight < 40_000; weight += 100) {
    const many = piecesATray(grams(weight));
    expect(many).toBeGreaterThanOrEqual(1);
    expect(many).toBeLessThanOrEqual(before);
    before = many;
  }
});
