import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readRange } from "./read-number.ts";
import { tokensOf } from "./tokens.ts";

const read = (words: string) => {
  const found = readRange(tokensOf(words), 0);
  return found === null
    ? null
    : [found.low, found.likely, found.high].map((n) => Math.round(n * 1000) / 1000);
};

describe("a number in words or figures", () => {
  it.each([
    ["2", [2, 2, 2]],
    ["1.5", [1.5, 1.5, 1.5]],
    ["0,25", [0.25, 0.25, 0.25]],
    ["1,200", [1200, 1200, 1200]],
    ["½", [0.5, 0.5, 0.5]],
    ["1½", [1.5, 1.5, 1.5]],
    ["1 ½", [1.5, 1.5, 1.5]],
    ["1 1/2", [1.5, 1.5, 1.5]],
    ["1-1/2", [1.5, 1.5, 1.5]],
    ["1⁄2", [0.5, 0.5, 0.5]],
    ["5/6", [5, 5.5, 6]],
    ["2-3", [2, 2.5, 3]],
    ["2 – 3", [2, 2.5, 3]],
    ["2 to 3", [2, 2.5, 3]],
    ["two or three", [2, 2.5, 3]],
    ["between 4 and 6", [4, 5, 6]],
    ["1 1/2–2", [1.5, 1.75, 2]],
    ["twenty-four", [24, 24, 24]],
    ["three hundred and fifty", [350, 350, 350]],
    ["a hundred and fifty", [150, 150, 150]],
    ["two thousand", [2000, 2000, 2000]],
    ["a dozen", [12, 12, 12]],
    ["half a dozen", [6, 6, 6]],
    ["half an", [0.5, 0.5, 0.5]],
    ["one and a half", [1.5, 1.5, 1.5]],
    ["three quarters of a", [0.75, 0.75, 0.75]],
    ["a few", [2, 3, 5]],
    ["a couple of", [2, 2, 3]],
    ["a", [1, 1, 1]],
    ["onion", null],
    ["", null],
  ])("%s", (words, expected) => {
    expect(read(words)).toEqual(expected);
  });

  it("keeps every token at its place in any line", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 80 }), (line) => {
        let at = 0;
        for (const t of tokensOf(line)) {
          expect(t.start).toBeGreaterThanOrEqual(at);
          expect(line.slice(t.start, t.end)).toBe(t.text);
          at = t.end;
        }
      }),
    );
  });
});
