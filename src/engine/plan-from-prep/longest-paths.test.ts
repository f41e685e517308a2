import { describe, expect, it } from "vitest";
import { longestPaths, noPath } from "./longest-paths.ts";
import type { Arc } from "./model.ts";

const arc = (from: number, to: number, weight: number): Arc => ({
  from,
  to,
  weight,
  lag: 0,
  most: weight < 0,
});

describe("longest paths", () => {
  const cases: readonly [what: string, arcs: readonly Arc[], from: number, to: number, least: number][] = [
    ["one arc", [arc(0, 1, 5)], 0, 1, 5],
    ["the longer of two ways", [arc(0, 1, 5), arc(1, 2, 5), arc(0, 2, 7)], 0, 2, 10],
    ["a most-lag reads backwards", [arc(0, 1, 5), arc(1, 0, -9)], 1, 0, -9],
    ["nothing between strangers", [arc(0, 1, 5)], 0, 2, noPath],
    ["oneself", [arc(0, 1, 5)], 1, 1, 0],
  ];
  for (const [what, arcs, from, to, least] of cases) {
    it(what, () => expect(longestPaths(3, arcs).least(from, to)).toBe(least));
  }

  it("names the ring that cannot close, and the minutes missing", () => {
    // 20 + 40 of work between two moments that may be 45 apart.
    const { ring } = longestPaths(4, [arc(0, 1, 20), arc(1, 2, 40), arc(2, 0, -45), arc(2, 3, 1)]);
    expect(ring?.excess).toBe(15);
    expect([...(ring?.nodes ?? [])].sort()).toEqual([0, 1, 2]);
  });

  it("finds no ring where the limit is met to the minute", () => {
    expect(longestPaths(2, [arc(0, 1, 45), arc(1, 0, -45)]).ring).toBeNull();
  });
});
