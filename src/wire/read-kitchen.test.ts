import { describe, expect, it } from "vitest";
import { readKitchen } from "./read-kitchen.ts";

const withRates = (rates: string) =>
  readKitchen(
    "kitchen.yaml",
    `name: Shed\nburners:\n  count: 1\n  kilowatts: 2\novens: []\nfridge litres: 50\ntrays: 0\noven minutes per 10 °C: 1\noven tolerance: 5\n${rates}`,
  );

describe("a kitchen's own rates", () => {
  it("are read by verb and food", () => {
    const { kitchen, problems } = withRates(
      "rates:\n  - work: peel\n    food: potatoes\n    minutes per kilo: 4\n  - work: shape\n    minutes per piece: 0.5\n",
    );
    expect(problems).toEqual([]);
    expect(kitchen?.rates).toEqual([
      { technique: "peel", food: "potato", per: "kilo", minutes: 4 },
      { technique: "shape", food: null, per: "piece", minutes: 0.5 },
    ]);
  });

  it.each([
    ["work that is none", "  - work: frob\n    minutes per kilo: 4\n", "work"],
    ["a food that is none", "  - work: peel\n    food: moonlight\n    minutes per kilo: 4\n", "food"],
    ["two rates in one", "  - work: peel\n    minutes per kilo: 4\n    minutes per piece: 1\n", "one-rate"],
    ["no rate at all", "  - work: peel\n", "one-rate"],
  ])("refuse %s with its place", (_, rates, wanted) => {
    const { problems } = withRates(`rates:\n${rates}`);
    expect(problems.map((p) => [p.code, (p.facts as { wanted: string }).wanted])).toEqual([
      ["value-bad", wanted],
    ]);
    expect(problems[0]?.place).toMatchObject({ file: "kitchen.yaml" });
    expect(problems[0]?.place.line).toBeGreaterThanOrEqual(11);
  });

  it("stay absent when none are given", () => {
    expect(withRates("").kitchen?.rates).toBeUndefined();
  });
});

describe("the way to the table", () => {
  it("is read, and none is where nothing is told", () => {
    expect(withRates("carry:\n  minutes: 1.5\n  plates: 3\n").kitchen?.carry).toEqual({
      minutes: 1.5,
      plates: 3,
    });
    expect(withRates("").kitchen?.carry).toBeUndefined();
  });

  it("is refused without the plates that go in one", () => {
    expect(withRates("carry:\n  minutes: 1.5\n").problems.map((p) => p.code)).toEqual(["key-missing"]);
  });
});
