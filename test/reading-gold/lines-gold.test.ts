import { describe, expect, it } from "vitest";
import { goldLines, goldLinesOf } from "./lines-gold.ts";
import { scoreLines } from "./lines-score.ts";

const folder = new URL(".", import.meta.url).pathname;

/**
 * Sets of lines, and the least share read right of each kind, in percent: what the reader reached, so that no change
 * makes it worse unseen. For a set that is held out it is what the reader reached when it first saw it.
 */
const sets = [
  {
    name: "that the reader was tuned on",
    file: "working/lines.yaml",
    least: 200,
    floor: { whole: 99, amounts: 99.5, food: 99.5 },
  },
  {
    name: "as cooks say them",
    file: "working/lines-third.yaml",
    least: 70,
    floor: { whole: 88.5, amounts: 92.5, food: 98.5 },
  },
  {
    name: "that the reader was never worked on",
    file: "held-out/lines-third.yaml",
    least: 150,
    floor: { whole: 95.5, amounts: 97, food: 98.5 },
  },
] as const;

describe.each(sets)("lines $name", ({ file, least, floor }) => {
  const lines = goldLines(folder + file);
  const score = scoreLines(lines);

  it("holds enough of them to count", () => {
    expect(lines.length).toBeGreaterThan(least);
  });

  it.each(Object.keys(floor) as (keyof typeof floor)[])("reads %s as well as it did", (kind) => {
    expect((100 * score.right[kind]) / score.of[kind]).toBeGreaterThanOrEqual(floor[kind]);
  });
});

describe("the score itself", () => {
  const scoreOf = (text: string): ReturnType<typeof scoreLines> => scoreLines(goldLinesOf(text));

  it("counts a wrong number, a wrong unit, a wrong food and a missed word", () => {
    const score = scoreOf(`lines:
      - {text: "2 onions", amounts: [3]}
      - {text: "2 tbsp milk", amounts: [2 tsp]}
      - {text: "2 onions", food: leek}
      - {text: "2 onions, sliced", preparation: []}
      - {text: "2 onions, sliced", amounts: [2], food: onion, preparation: [sliced]}`);
    expect(score.right.whole).toBe(1);
    expect(score.of.whole).toBe(5);
    expect([score.right.amounts, score.of.amounts]).toEqual([1, 3]);
    expect(score.misses).toHaveLength(4);
  });

  it("counts a food too many or too few", () => {
    const score = scoreOf(`lines:
      - {text: "2 onions and 1 leek", amounts: [2], food: onion}
      - {text: "2 onions", foods: [{amounts: [2]}, {amounts: [1]}]}`);
    expect(score.right.whole).toBe(0);
  });

  it("refuses keys, amounts and foods that it does not know", () => {
    expect(() => scoreOf("lines: [{text: salt, fod: salt}]")).toThrow();
    expect(() => scoreOf("lines: [{text: salt, amounts: [some]}]")).toThrow();
    expect(() => scoreOf("lines: [{text: salt, food: zzz}]")).toThrow();
  });
});
