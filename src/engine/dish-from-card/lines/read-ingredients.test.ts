import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Finding } from "../../findings/finding.ts";
import type { Card } from "../../model/card.ts";
import type { Ingredient } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import { readIngredients } from "./read-ingredients.ts";

const card = (lines: readonly string[], part: string | null = null): Card => {
  const text = lines.join("\n");
  let at = 0;
  const words = lines.map((line) => {
    const start = at;
    at += line.length + 1;
    return { text: line, span: { start, end: start + line.length } };
  });
  return {
    source: "card",
    text,
    title: null,
    yields: [],
    times: [],
    blocks: [{ role: "ingredients", heading: null, part, lines: words }],
  };
};

const read = (line: string, region: Region = "uk") => readIngredients(card([line]), region);
const one = (line: string, region: Region = "uk"): Ingredient | undefined =>
  read(line, region).ingredients[0];
const apply = (text: string, finding: Finding | undefined, fix = 0): string =>
  [...(finding?.fixes[fix]?.edits ?? [])]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((t, e) => t.slice(0, e.span.start) + e.text + t.slice(e.span.end), text);

const weights: readonly (readonly [
  line: string,
  region: Region,
  grams: number,
  basis: string,
  on: string,
])[] = [
  ["500 g flour", "uk", 500, "weighed", "as-purchased"],
  ["1 lb plums", "uk", 453.59237, "weighed", "as-purchased"],
  ["500 g potatoes, peeled", "uk", 500, "weighed", "as-purchased"],
  ["500 g peeled potatoes", "uk", 500, "weighed", "edible-portion"],
  ["2 x 400 g tins of chickpeas, drained", "uk", 480, "weighed", "edible-portion"],
  ["1 (400g) can chopped tomatoes", "uk", 400, "weighed", "edible-portion"],
  ["1 tin chopped tomatoes", "uk", 400, "pack", "edible-portion"],
  ["600 ml water", "uk", 600, "volume", "edible-portion"],
  ["2 leeks (about 600 g)", "uk", 600, "weighed", "as-purchased"],
  ["3 onions", "uk", 330, "pieces", "edible-portion"],
  ["2 large onions", "uk", 300, "pieces", "edible-portion"],
  ["a pinch of salt", "uk", 0.4, "vague", "edible-portion"],
  ["a generous pinch of salt", "uk", 0.8, "vague", "edible-portion"],
  ["2 heaped tbsp plain flour", "us", 2 * 1.75 * 14.78676478125 * 0.528, "volume", "edible-portion"],
  ["a slosh of cider, about 60 ml", "uk", 60, "volume", "edible-portion"],
  ["4 x 150 g salmon fillets", "uk", 600, "weighed", "as-purchased"],
  ["a 5 cm piece of ginger", "uk", 15 * (5 / 2.54), "pieces", "edible-portion"],
  ["juice and zest of 2 lemons", "uk", 100, "pieces", "edible-portion"],
  ["salt to taste", "uk", 4, "vague", "edible-portion"],
  ["flour, for dusting", "uk", 15, "vague", "edible-portion"],
];

describe("the weight of a line", () => {
  it.each(weights)("%s (%s)", (line, region, grams, basis, on) => {
    const found = one(line, region);
    expect(found?.grams?.likely).toBeCloseTo(grams, grams > 100 ? -0.5 : 0);
    expect(found?.gramsBasis).toBe(basis);
    expect(found?.weightBasis).toBe(on);
  });

  it("shares one weight between two foods, with its doubt", () => {
    const { ingredients } = read("600 g carrots and parsnips");
    expect(ingredients.map((i) => i.grams)).toEqual([
      { low: 150, likely: 300, high: 450 },
      { low: 150, likely: 300, high: 450 },
    ]);
  });

  it("asks for no weight of another card: that card has its own", () => {
    expect(one("1 quantity of brown chicken stock")).toMatchObject({
      card: "brown chicken stock",
      grams: null,
    });
    expect(one("500 ml chicken stock")?.card).toBeNull();
  });

  it("raises the most, not the likeliest, for what is extra", () => {
    const grams = one("1 kg strong white flour, plus extra for dusting")?.grams;
    expect(grams?.likely).toBe(1000);
    expect(grams?.high).toBeGreaterThan(1000);
  });
});

describe("what is said about a line", () => {
  const codes = (line: string, region: Region = "uk") => read(line, region).findings.map((f) => f.code);

  it.each([
    ["500 g flour", []],
    ["2 tbsp olive oil", []],
    ["3 onions", ["weight-assumed"]],
    ["a slosh of cider", ["amount-vague"]],
    ["a slosh of cider, about 60 ml", []],
    ["250 g (9 oz) sugar", []],
    ["25 g (1 oz) butter", []],
    ["2.5 kg (roughly 3 pounds) pork shoulder", ["amounts-disagree"]],
    ["one side of sea trout, about a kilo", []],
    ["1 sea bass, about 1.2 kg", []],
    ["1 piece of pumpkin, about 900 g", []],
    ["2 onions, about 1.5 kg", ["amounts-disagree"]],
    ["chicken thighs", ["amount-missing"]],
    ["salt", ["amount-vague"]],
    ["200 g blorfberries", ["food-unknown"]],
    ["100 g mayonaise", ["food-unknown"]],
    ["kitchen foil", []],
    ["1 quantity of brown chicken stock", []],
    ["2 T butter", ["unit-doubtful"]],
    ["200 flour", ["unit-doubtful"]],
    ["2 tbsp butter", []],
  ] as const)("%s → %o", (line, expected) => {
    expect(codes(line)).toEqual(expected);
  });

  const warned = (...lines: string[]): readonly string[] =>
    readIngredients(card(lines), "uk")
      .findings.filter((f) => f.severity === "warn")
      .map((f) => f.code);

  it.each([
    ["kitchen letters", ["3 T butter", "1 t cumin", "2 c stock"], []],
    ["a letter too large for its food", ["3 T baking powder"], ["unit-doubtful"]],
    ["a letter too small for its food", ["6 t milk"], ["unit-doubtful"]],
    ["a spoon of no size", ["1 spoon sugar"], ["unit-doubtful"]],
    ["a list without amounts", ["leeks", "potatoes", "cream", "a bay leaf"], ["amount-missing"]],
    ["one line without an amount", ["2 leeks", "3 potatoes", "cream"], ["amount-missing"]],
    ["what usually has none", ["2 leeks", "lemon wedges, to serve", "chives (optional)"], []],
  ] as const)("warns no more than it must of %s", (_, lines, expected) => {
    expect(warned(...lines)).toEqual(expected);
  });

  it("doubts a unit once on a card, however often it is written", () => {
    const { findings } = readIngredients(card(["2 cups milk", "1 cup water", "3 cups stock"]), "uk");
    expect(findings.filter((f) => f.code === "unit-doubtful")).toHaveLength(1);
    expect(readIngredients(card(["2 cups milk"]), "us").findings).toEqual([]);
  });

  it.each([
    ["3 onions", "3 onions (about 330 g)"],
    ["a slosh of cider", "50 ml of cider"],
    ["100 g mayonaise", "100 g mayonnaise"],
    ["2 T butter", "2 tbsp butter"],
    ["salt", "4 g salt"],
    ["200 flour", "200 g flour"],
  ])("mends %s to %s, and then has nothing left to say", (line, mended) => {
    const { findings } = read(line);
    expect(apply(line, findings[0])).toBe(mended);
    expect(codes(mended)).toEqual([]);
  });

  it("points at both amounts that do not agree", () => {
    const [found] = read("2.5 kg (roughly 3 pounds) pork shoulder").findings;
    expect(found?.related).toHaveLength(1);
    expect(found?.facts).toMatchObject({ name: "pork shoulder" });
  });
});

describe("a dish with no list", () => {
  it("finds the foods that are told with an amount in the method", () => {
    const text =
      "You want two onions and a good slosh of cider, about a hundred and fifty ml. Sweat the onions in 40 g butter for 10 minutes at 180C.";
    const { ingredients } = readIngredients(
      {
        source: "card",
        text,
        title: null,
        yields: [],
        times: [],
        blocks: [
          {
            role: "method",
            heading: null,
            part: null,
            lines: [{ text, span: { start: 0, end: text.length } }],
          },
        ],
      },
      "uk",
    );
    expect(ingredients.map((i) => i.food)).toEqual(["onion", "cider", "unsalted-butter"]);
    expect(ingredients[1]?.grams?.likely).toBeCloseTo(150, -1);
    for (const i of ingredients) expect(text.slice(i.span.start, i.span.end)).toBe(i.text);
  });
});

describe("any line at all", () => {
  const scraps = [
    "2",
    "½",
    "1/0",
    "x",
    "400 g",
    "tin",
    "(",
    ")",
    ",",
    "or",
    "and",
    "each",
    "of",
    "a",
    "butter",
    "juice",
    "-",
    "½½",
    "%",
    "eggs",
    "\u0000",
    "é",
    "plus",
    "extra",
    "for",
    "salt",
    "1-2-3",
    "/",
    "T",
    "99999999999",
  ];
  const lines = fc.oneof(
    fc.string({ unit: "binary", maxLength: 120 }),
    fc.array(fc.constantFrom(...scraps), { maxLength: 20 }).map((s) => s.join(" ")),
  );

  it("is read without a throw, with spans inside it and estimates in order", () => {
    fc.assert(
      fc.property(lines, fc.constantFrom<Region>("uk", "us", "eu", "au"), (line, region) => {
        const { ingredients, findings } = read(line, region);
        for (const i of ingredients) {
          expect(line.slice(i.span.start, i.span.end)).toBe(i.text);
          expect(i.nameSpan.end).toBeLessThanOrEqual(line.length);
          for (const a of i.amounts) {
            expect(a.span.start).toBeGreaterThanOrEqual(0);
            expect(a.span.end).toBeLessThanOrEqual(line.length);
          }
          const g = i.grams;
          if (g !== null)
            expect(g.low <= g.likely && g.likely <= g.high && Number.isFinite(g.high)).toBe(true);
        }
        for (const f of findings) expect(f.span.end).toBeLessThanOrEqual(line.length);
      }),
      { numRuns: 500 },
    );
  });

  it("takes time in line with its length", () => {
    for (const piece of [
      "a ",
      "1 ",
      "(",
      "1 or ",
      "and salt ",
      "leg of ",
      ", chopped",
      "½ x 2 g ",
      "juice of ",
      "- ",
    ]) {
      const started = performance.now();
      read(piece.repeat(Math.ceil(4000 / piece.length)));
      expect(performance.now() - started, piece).toBeLessThan(2000);
    }
  });
});
