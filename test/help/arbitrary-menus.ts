import fc from "fast-check";
import { type Dish, grams, type Ingredient, type Pack, type Sitting, share } from "#engine/index.ts";
import { dish, guest, ingredient, pack, pieces, sitting } from "./dishes.ts";

/** Foods with trim, without, in parts of one whole, from the tap, and unknown. */
const foods = [
  "leek",
  "unsalted-butter",
  "egg",
  "egg-yolk",
  "egg-white",
  "lemon",
  "walnut",
  "chicken-thigh",
  "water",
  null,
];

const aLine = fc.record({
  food: fc.constantFrom(...foods),
  low: fc.integer({ min: 1, max: 900 }),
  more: fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 })),
  weightBasis: fc.constantFrom("as-purchased" as const, "edible-portion" as const),
  portion: fc.constantFrom(null, "juice", "zest"),
  counted: fc.option(fc.integer({ min: 1, max: 9 }), { nil: null }),
  silent: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
});

const lineOf = (line: typeof aLine extends fc.Arbitrary<infer T> ? T : never, index: number): Ingredient => {
  const low = line.low;
  const likely = low + line.more[0];
  const weight = line.silent && index > 0 ? null : likely;
  return ingredient(index, line.food, weight, {
    grams:
      weight === null ? null : { low: grams(low), likely: grams(likely), high: grams(likely + line.more[1]) },
    weightBasis: line.weightBasis,
    portion: line.food === "lemon" ? line.portion : null,
    ...(line.counted === null ? {} : { amounts: pieces(line.counted).amounts ?? [] }),
  });
};

const aDish = (source: string): fc.Arbitrary<Dish> =>
  fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.array(aLine, { minLength: 1, maxLength: 6 }))
    .map(([portions, lines]) => {
      const walnut = lines.findIndex((l) => l.food === "walnut");
      return dish(source, portions, lines.map(lineOf), {
        swaps:
          walnut < 0
            ? []
            : [
                {
                  text: "",
                  span: { start: 0, end: 0 },
                  needs: ["no-nuts"],
                  out: [walnut],
                  comes: [{ food: "pumpkin-seed", name: "pumpkin seeds", grams: null, amounts: [] }],
                },
              ],
      });
    });

/** One to three dishes, some with a swap for the guest who has no nuts. */
export const someDishes: fc.Arbitrary<readonly Dish[]> = fc
  .integer({ min: 1, max: 3 })
  .chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => aDish(`dish-${i}`))));

/** Rows of price lists for most of the foods: one to three sizes each, some by the piece. */
export const somePacks: fc.Arbitrary<readonly Pack[]> = fc
  .array(
    fc.record({
      food: fc.constantFrom(
        "leek",
        "butter",
        "egg",
        "egg white",
        "lemon",
        "walnut",
        "pumpkin seed",
        "chicken thigh",
        "stranger",
      ),
      size: fc.integer({ min: 1, max: 12 }),
      unit: fc.constantFrom("g", "kg", "piece", "lb", "100 g"),
      price: fc.integer({ min: 1, max: 900 }),
      supplier: fc.constantFrom("Market", "Mill"),
    }),
    { maxLength: 14 },
  )
  .map((rows) =>
    rows.map((r) =>
      r.unit === "100 g"
        ? pack(r.food, r.size * 100, "g", r.price, r.supplier)
        : pack(r.food, r.size, r.unit, r.price, r.supplier),
    ),
  );

/** A sitting that serves all these dishes, with one guest who has no nuts. */
export const sittingFor = (dishes: readonly Dish[], covers: number, more: Partial<Sitting> = {}): Sitting =>
  sitting(
    dishes.map((d) => d.source),
    covers,
    { guests: [guest("Ann", "no-nuts")], spare: share(0.05), ...more },
  );
