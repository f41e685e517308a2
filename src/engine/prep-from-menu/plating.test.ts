import { describe, expect, it } from "vitest";
import { count, minutes } from "../measure/units.ts";
import { plateSegments } from "./plating.ts";

const likely = (portions: number, carry?: { plates: number; each: number }): readonly number[] =>
  plateSegments(portions, 0, carry && { plates: count(carry.plates), minutes: minutes(carry.each) }).map(
    (segment) => segment.minutes.likely,
  );

describe("plates that are carried to the table", () => {
  it.each([
    [24, 3, 1.5, 12],
    [25, 3, 1.5, 13.5],
    [2, 3, 1, 1],
  ])("%i plates, %i at a time, %d min a way: %d min", (portions, plates, each, expected) => {
    const [plating, carrying] = likely(portions, { plates, each });
    expect([plating, carrying]).toEqual([likely(portions)[0], expected]);
  });

  it("are taken at the pass where no way is told", () => {
    expect(likely(24)).toHaveLength(1);
  });
});
