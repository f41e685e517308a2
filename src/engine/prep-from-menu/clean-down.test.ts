import { describe, expect, it } from "vitest";
import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Segment } from "../model/prep.ts";
import { soils, thenCleaned } from "./clean-down.ts";

const segment = (attention: Segment["attention"], length: number): Segment => ({
  minutes: exactly(minutes(length)),
  attention,
  station: "hands",
  uses: [],
});

describe("cleaning down", () => {
  it.each([
    ["chicken-thigh", true],
    ["egg", true],
    ["carrot", false],
    [null, false],
  ])("after %s: %s", (food, expected) => expect(soils([food])).toBe(expected));

  it("comes after the first stretch by hand, so that what cooks goes on alone", () => {
    const lengths = thenCleaned([segment("hands", 5), segment("none", 40), segment("hands", 1)]);
    expect(lengths.map((s) => s.minutes.likely)).toEqual([7, 40, 1]);
  });

  it("is done by somebody where nobody had a hand in it", () => {
    expect(thenCleaned([segment("none", 40)]).map((s) => s.attention)).toEqual(["none", "hands"]);
  });
});
