import { describe, expect, it } from "vitest";
import { count, type SheetLine } from "#engine/index.ts";
import { amountText, equipmentText, lineName, piecesText, whyText } from "./sheet-text.ts";

const line = (more: Partial<SheetLine>): SheetLine => ({
  ingredient: 0,
  part: null,
  name: "garlic",
  portion: null,
  preparation: [],
  optional: false,
  cardText: null,
  amount: null,
  pieces: null,
  adjusted: [],
  base: null,
  ...more,
});

const weighed = (exact: number) => line({ amount: { unit: "g", value: exact, exact } });
const pieces = (value: number, name: string | null) => line({ pieces: { value, exact: value, name } });

describe("an amount on the sheet", () => {
  it.each([
    [0.05, "a few grains"],
    [0.4, "a pinch"],
    [2.5, "2.5 g"],
    [1350, "1.35 kg"],
  ])("of %s g", (exact, words) => {
    expect(amountText(weighed(exact))).toBe(words);
  });

  it.each([
    [20, "clove", "20 cloves"],
    [1, "clove", "1 clove"],
    [12, "leaf", "12 leaves"],
    [2, "bunch", "2 bunches"],
    [6, "large", "6 large"],
    [0.5, "bulb", "½ bulb"],
    [3, null, "3"],
  ])("of %s %s", (value, name, words) => {
    expect(piecesText(pieces(value, name))).toBe(words);
  });
});

describe("a line of the sheet", () => {
  it("names the part of the food", () => {
    expect(lineName(line({ name: "lime", portion: "juice", preparation: ["strained"] }))).toBe(
      "lime juice, strained",
    );
  });

  it("is to be tasted far from the card, and not near it", () => {
    const seasoned = line({ base: "taste" });
    expect(whyText(seasoned, 30).join()).toContain("taste and adjust");
    expect(whyText(seasoned, 3)).toEqual([]);
  });
});

describe("what is needed of the kitchen", () => {
  it.each([
    [3, 4, "3 × stockpot"],
    [35, 2, "2 × stockpot, all there are, for 35 fillings in turns"],
    [3, 0, "3 × stockpot (there is none)"],
    [24, null, "24 × stockpot"],
  ])("%s of %s", (many, has, words) => {
    const needed = {
      kind: "pan",
      name: "stockpot",
      count: count(many),
      has: has === null ? null : count(has),
    } as const;
    expect(equipmentText(needed, true)).toBe(words);
  });
});
