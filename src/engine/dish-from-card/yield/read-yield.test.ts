import { describe, expect, it } from "vitest";
import { chooseYield, portionsOf, readYield } from "./read-yield.ts";

const read = (text: string, region: "uk" | "us" = "uk") =>
  readYield({ text, span: { start: 0, end: text.length } }, region);

const rows: readonly (readonly [text: string, kind: string, low: number, high: number, noun: string])[] = [
  ["Serves 8", "portions", 8, 8, ""],
  ["SERVES 6", "portions", 6, 6, ""],
  ["Serves 4-6", "portions", 4, 6, ""],
  ["Servings: 4 - 6", "portions", 4, 6, ""],
  ["Servings: 6+", "portions", 6, 6, ""],
  ["Serves four to six people", "portions", 4, 6, ""],
  ["Sufficient for 5 or 6 persons", "portions", 5, 6, ""],
  ["enough for eight", "portions", 8, 8, ""],
  ["Usually enough for a family of five", "portions", 5, 5, ""],
  ["it'll do about six of you", "portions", 6, 6, ""],
  ["enough for four of us", "portions", 4, 4, ""],
  ["this does eight", "portions", 8, 8, ""],
  ["for 8 people", "portions", 8, 8, ""],
  ["6 servings", "portions", 6, 6, ""],
  ["Yield 100 Portion 1 Cup", "portions", 100, 100, "1 Cup"],
  ["Makes 2 litres of stock", "volume", 2000, 2000, "stock"],
  ["Makes 24", "portions", 24, 24, ""],
  ["Makes 24 biscuits", "pieces", 24, 24, "biscuits"],
  ["Makes about two dozen scones", "pieces", 24, 24, "scones"],
  ["Servings: 6 patties", "pieces", 6, 6, "patties"],
  ["Yield: 12 muffins", "pieces", 12, 12, "muffins"],
  ["Makes 3 jars", "pieces", 3, 3, "jars"],
  ["Makes one loaf", "tin", 1, 1, "loaf"],
  ["Makes one 23 cm tart", "tin", 1, 1, "23 cm tart"],
  ["Fills a 23 cm tin", "tin", 1, 1, "23 cm tin"],
  ["Fills 8 small pots", "tin", 8, 8, "small pots"],
  ["Makes 4 litres", "volume", 4000, 4000, ""],
  ["Makes 1.5 kg", "mass", 1500, 1500, ""],
  ["Makes about a litre", "volume", 1000, 1000, ""],
  ["Does four as a starter", "portions", 4, 4, "as a starter"],
  ["Does 14 slices", "pieces", 14, 14, "slices"],
  ["Makes one 20cm pie, cuts into 6", "pieces", 6, 6, "pieces"],
  ["Makes one 23cm tart, 10 slices", "pieces", 10, 10, "slices"],
  ["Makes 1 loaf (about 12 slices)", "pieces", 12, 12, "slices"],
  ["Makes a 900 g loaf, serves 8", "portions", 8, 8, ""],
  ["Makes two tarts, each serving six", "portions", 12, 12, ""],
  ["Makes a big trifle, enough for ten", "portions", 10, 10, ""],
  ["Serves 4-6", "portions", 4, 6, ""],
  ["Makes one cake - 14 to 16 portions", "portions", 14, 16, ""],
  ["Makes 24, for 12 people", "portions", 12, 12, ""],
  ["Makes 12-16 pieces", "pieces", 12, 16, "pieces"],
  ["Makes 12 - 16 pieces", "pieces", 12, 16, "pieces"],
  ["cuts into 10 squares", "pieces", 10, 10, "squares"],
  ["Makes 18 small, 3 each", "portions", 6, 6, ""],
  ["Gives about 2 pints", "volume", 1136.5225, 1136.5225, ""],
];

describe("a yield", () => {
  it.each(rows)("%s", (text, kind, low, high, noun) => {
    const found = read(text);
    expect(found?.kind).toBe(kind);
    expect(found?.amount.low).toBeCloseTo(low, 6);
    expect(found?.amount.high).toBeCloseTo(high, 6);
    expect(found?.noun).toBe(noun);
  });

  it("counts a pint by its region", () => {
    expect(read("Makes 1 pint", "us")?.amount.likely).toBeCloseTo(473.176473, 6);
  });

  it("is none when no number stands in the words", () => {
    expect(read("Serves plenty")).toBeNull();
    expect(read("")).toBeNull();
  });

  it("serves as many as it counts, and a tart is nobody's portion", () => {
    expect(portionsOf(read("Makes 24 biscuits"))?.likely).toBe(24);
    expect(portionsOf(read("Makes one 23 cm tart"))).toBeNull();
    expect(portionsOf(read("Makes 4 litres"))).toBeNull();
    expect(portionsOf(null)).toBeNull();
  });

  it("takes the count of people before what it fills", () => {
    const yields = ["Fills a 20 cm tin", "Serves 10"].flatMap((t) => read(t) ?? []);
    expect(chooseYield(yields)?.kind).toBe("portions");
  });
});
