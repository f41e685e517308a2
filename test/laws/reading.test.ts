import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Dish, Finding, Span } from "#engine/index.ts";
import { readCard } from "#engine/index.ts";

/** Pieces that cards are made of, good and broken, so that random texts reach deep into the reader. */
const scraps = [
  "Serves 8",
  "Makes 24",
  "Ingredients",
  "Method:",
  "## For the dough",
  "To serve",
  "Keeping",
  "Swaps",
  "2 onions, finely chopped",
  "500g flour",
  "1/2 cup + 2 tbsp milk",
  "1 1/2–2 tsp salt",
  "2 x 400 g tins of beans, drained",
  "a slosh of cider, about 60 ml",
  "juice and zest of 2 lemons",
  "salt and pepper",
  "1. Sweat the onions for 10 minutes, till soft.",
  "Bake at 180C/350F/gas 4 for 25-30 minutes or until golden.",
  "Meanwhile, whisk half the butter with the rest of the sugar.",
  "Leave it overnight.",
  "Without nuts: replace the walnuts with the same weight of seeds.",
  "Keeps 3 days in the fridge",
  "½",
  "1⁄2",
  "((((",
  "0/0 cups",
  "99999999999999999999 g salt",
  "-5 eggs",
  "\u0000",
  "\u202e",
  "👩‍🍳",
  "\t",
  "\r\n",
];

const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 400 }),
  fc.string({ unit: "grapheme", maxLength: 400 }),
  fc
    .array(fc.oneof(fc.constantFrom(...scraps), fc.string({ maxLength: 30 })), { maxLength: 25 })
    .chain((parts) => fc.constantFrom("\n", " ", "\n\n", "\r\n", ", ").map((glue) => parts.join(glue))),
);

const inside = (span: Span, text: string): boolean =>
  Number.isInteger(span.start) &&
  Number.isInteger(span.end) &&
  span.start >= 0 &&
  span.start <= span.end &&
  span.end <= text.length;

const spansOf = (dish: Dish, findings: readonly Finding[]): Span[] => [
  dish.titleSpan,
  ...(dish.yield ? [dish.yield.words.span] : []),
  ...dish.ingredients.flatMap((i) => [i.span, i.nameSpan, ...i.amounts.map((a) => a.span)]),
  ...dish.steps.flatMap((s) => [s.span, ...s.actions.flatMap((a) => [a.span, ...a.uses.map((u) => u.span)])]),
  ...dish.swaps.map((s) => s.span),
  ...dish.keeping.map((k) => k.span),
  ...findings.flatMap((f) => [
    f.span,
    ...f.related.map((r) => r.span),
    ...f.fixes.flatMap((x) => x.edits.map((e) => e.span)),
  ]),
];

describe("reading any text", () => {
  it("never throws, and every span lies in the text", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { value, findings } = readCard(text, "card");
        for (const span of spansOf(value, findings))
          expect(inside(span, text), JSON.stringify(span)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it("shows the cook's own words at the spans of lines and steps", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { value } = readCard(text, "card");
        for (const s of value.steps) expect(text.slice(s.span.start, s.span.end)).toBe(s.text);
        for (const i of value.ingredients) expect(text.slice(i.span.start, i.span.end)).toBe(i.text);
      }),
    );
  });

  it("keeps estimates in order, shares between 0 and 1, and references within the dish", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { value: dish } = readCard(text, "card");
        const ids = new Set(dish.steps.flatMap((s) => s.actions.map((a) => a.id)));
        for (const i of dish.ingredients) {
          for (const a of [...i.amounts, ...(i.grams ? [i.grams] : [])]) {
            expect(Number.isFinite(a.high)).toBe(true);
            expect(a.low).toBeLessThanOrEqual(a.likely);
            expect(a.likely).toBeLessThanOrEqual(a.high);
            expect(a.low).toBeGreaterThanOrEqual(0);
          }
        }
        for (const action of dish.steps.flatMap((s) => s.actions)) {
          for (const earlier of action.after) expect(ids.has(earlier)).toBe(true);
          for (const use of action.uses) {
            expect(use.share).toBeGreaterThanOrEqual(0);
            expect(use.share).toBeLessThanOrEqual(1);
            if (use.ingredient !== null) expect(dish.ingredients[use.ingredient]).toBeDefined();
            if (use.product !== null) expect(ids.has(use.product)).toBe(true);
          }
          if (action.minutes) {
            expect(action.minutes.low).toBeLessThanOrEqual(action.minutes.likely);
            expect(action.minutes.likely).toBeLessThanOrEqual(action.minutes.high);
          }
        }
      }),
    );
  });

  // "constructor" and its like are names that every object of JavaScript bears, and no table may take them for its own.
  it.each(["constructor", "toString", "valueOf", "hasOwnProperty", "__proto__"])(
    "takes the word %s for a word like any other",
    (word) => {
      const text = `Rice\n\nServes 2\n\n2 lemons\n200 g rice\n\nSimmer the rice for 5 ${word}. Half the ${word} of the lemons; add 2 ${word} rice to a ${word} oven, ${word} lemons and the other ${word}.`;
      const actions = readCard(text, "card").value.steps.flatMap((s) => s.actions);
      expect(actions.length).toBeGreaterThan(0);
      for (const { minutes, celsius, uses } of actions) {
        expect(Number.isFinite(minutes?.likely ?? 0)).toBe(true);
        expect(Number.isFinite(celsius ?? 0)).toBe(true);
        for (const use of uses) expect(Number.isFinite(use.share)).toBe(true);
      }
    },
  );

  it("needs no order of the actions but the one it states: the graph has no cycle", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { value: dish } = readCard(text, "card");
        const actions = dish.steps.flatMap((s) => s.actions);
        const after = new Map(actions.map((a) => [a.id, a.after]));
        const done = new Set<string>();
        const open = new Set<string>();
        const visit = (id: string): void => {
          if (done.has(id)) return;
          expect(open.has(id), `cycle through ${id}`).toBe(false);
          open.add(id);
          for (const earlier of after.get(id) ?? []) visit(earlier);
          open.delete(id);
          done.add(id);
        };
        for (const a of actions) visit(a.id);
      }),
    );
  });

  it("gives the same dish for the same text", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(JSON.stringify(readCard(text, "card"))).toBe(JSON.stringify(readCard(text, "card")));
      }),
    );
  });
});
