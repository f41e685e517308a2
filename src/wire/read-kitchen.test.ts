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

describe("tins", () => {
  const tins = (rows: string) => withRates(`tins:\n${rows}`);

  it("are called by their size, or by their own name", () => {
    const { kitchen, problems } = tins(
      "  - shape: round\n    wide cm: 20\n    count: 4\n  - name: old loaf tins\n    shape: loaf\n    wide cm: 11\n    long cm: 21\n    count: 6\n    wash minutes: 1\n  - shape: rectangle\n    wide cm: 23\n    long cm: 33\n    count: 1\n",
    );
    expect(problems).toEqual([]);
    expect(kitchen?.tins).toEqual([
      { name: "20 cm round tin", form: "round", wideCm: 20, longCm: 20, count: 4 },
      { name: "old loaf tins", form: "loaf", wideCm: 11, longCm: 21, count: 6, washMinutes: 1 },
      { name: "33 × 23 cm tin", form: "rectangle", wideCm: 23, longCm: 33, count: 1 },
    ]);
    expect(withRates("").kitchen?.tins).toBeUndefined();
  });

  it.each([
    ["a shape that is none", "  - shape: star\n    wide cm: 20\n    count: 1\n", "tin-shape"],
    ["a loaf tin without its length", "  - shape: loaf\n    wide cm: 11\n    count: 1\n", "tin-length"],
    ["a long round one", "  - shape: round\n    wide cm: 11\n    long cm: 20\n    count: 1\n", "tin-length"],
  ])("refuse %s", (_, rows, wanted) => {
    const { problems } = tins(rows);
    expect(problems.map((p) => [p.code, (p.facts as { wanted: string }).wanted])).toEqual([
      ["value-bad", wanted],
    ]);
  });
});
