import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Attention, Task } from "#engine/index.ts";
import { type Bar, dayWindows, joined, lanesOf, type Row } from "./rows.ts";

const bar = (from: number, to: number, attention: Attention = "hands", segment = 0): Bar => ({
  task: { id: `${from}-${to}` } as Task,
  segment,
  from,
  to,
  parts: [{ from, to, attention }],
  celsius: null,
});

describe("lanes", () => {
  it("puts bars that follow each other in one lane, and those that overlap in two", () => {
    expect(lanesOf([bar(0, 10), bar(10, 20), bar(5, 12)]).map((l) => l.map((b) => b.from))).toEqual([
      [0, 10],
      [5],
    ]);
  });
  it("loses no bar, lets none overlap, and uses no more lanes than run at once", () => {
    const bars = fc.array(
      fc
        .tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 90 }))
        .map(([a, d]) => bar(a, a + d)),
    );
    fc.assert(
      fc.property(bars, (given) => {
        const lanes = lanesOf(given);
        expect(lanes.flat().length).toBe(given.length);
        for (const lane of lanes)
          lane.forEach((b, i) => {
            if (i > 0) expect(b.from).toBeGreaterThanOrEqual(lane[i - 1]!.to);
          });
        const atOnce = Math.max(
          0,
          ...given.map((b) => given.filter((o) => o.from <= b.from && b.from < o.to).length),
        );
        expect(lanes.length).toBe(atOnce);
      }),
    );
  });
});

describe("joined", () => {
  it("makes one bar of segments that follow, and begins anew after one that lies elsewhere", () => {
    const one = joined([bar(0, 2), bar(2, 9, "mind", 1), bar(40, 42, "hands", 3)]);
    expect(one.map((b) => [b.from, b.to, b.parts.map((p) => p.attention)])).toEqual([
      [0, 9, ["hands", "mind"]],
      [40, 42, ["hands"]],
    ]);
  });
});

describe("days", () => {
  const row = (group: Row["group"], ...bars: Bar[]): Row => ({
    id: group,
    name: group,
    group,
    lanes: [bars],
  });
  it("opens one for each day of work, on half hours round it", () => {
    expect(dayWindows([row("hands", bar(-600, -540), bar(605, 640))], [700])).toEqual([
      { day: -1, from: -630, to: -510 },
      { day: 0, from: 600, to: 720 },
    ]);
  });
  it("opens none for what only stands in the fridge", () => {
    expect(dayWindows([row("other", bar(-3000, -2000))], [])).toEqual([]);
  });
});
