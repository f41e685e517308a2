import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cover, type Offer } from "./cover.ts";

/** Every combination, up to as many of each as could be useful. */
const bruteForce = (
  need: number,
  offers: readonly Offer[],
): readonly [price: number, size: number, packs: number] => {
  let best: readonly [number, number, number] = [Number.POSITIVE_INFINITY, 0, 0];
  const less = (a: typeof best, b: typeof best): boolean =>
    a[0] !== b[0] ? a[0] < b[0] : a[1] !== b[1] ? a[1] < b[1] : a[2] < b[2];
  const walk = (i: number, price: number, size: number, packs: number): void => {
    if (size >= need) {
      if (less([price, size, packs], best)) best = [price, size, packs];
      return;
    }
    const offer = offers[i];
    if (offer === undefined) return;
    for (let n = 0; n <= Math.ceil((need - size) / offer.size); n += 1)
      walk(i + 1, price + n * offer.price, size + n * offer.size, packs + n);
  };
  walk(0, 0, 0, 0);
  return best;
};

const totals = (counts: readonly number[], offers: readonly Offer[]): readonly [number, number, number] => [
  counts.reduce((sum, n, i) => sum + n * offers[i]!.price, 0),
  counts.reduce((sum, n, i) => sum + n * offers[i]!.size, 0),
  counts.reduce((sum, n) => sum + n, 0),
];

const anOffer = fc.record({ size: fc.integer({ min: 1, max: 12 }), price: fc.integer({ min: 0, max: 30 }) });
const offersOf = fc.array(anOffer, { minLength: 1, maxLength: 3 });

describe("cover", () => {
  it("is as good as trying every combination: price, then waste, then packs", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), offersOf, (need, offers) => {
        expect(totals(cover(need, offers)!, offers)).toEqual(bruteForce(need, offers));
      }),
      { numRuns: 300 },
    );
  });

  it("finds the least price where sizes fit no grid", () => {
    const odd = fc.record({
      size: fc.double({ min: 1, max: 12, noNaN: true }).map((n) => n + Math.PI / 1e4),
      price: fc.integer({ min: 1, max: 30 }),
    });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.array(odd, { minLength: 1, maxLength: 3 }),
        (need, offers) => {
          const [price, size] = totals(cover(need, offers)!, offers);
          expect(size).toBeGreaterThanOrEqual(need * (1 - 1e-6));
          expect(price).toBeLessThanOrEqual(bruteForce(need, offers)[0]);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("does not lose the optimum by setting bulk aside", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 5000 }), offersOf, (need, offers) => {
        const [price, size, packs] = totals(cover(need, offers)!, offers);
        // One call after another without bulk: the plain recurrence over the need.
        const best: (readonly [number, number, number])[] = [[0, 0, 0]];
        for (let n = 1; n <= need; n += 1) {
          const tries = offers.map((o) => {
            const [p, s, k] = best[Math.max(0, n - o.size)]!;
            return [p + o.price, s + o.size, k + 1] as const;
          });
          best.push(tries.reduce((a, b) => ((b[0] - a[0] || b[1] - a[1] || b[2] - a[2]) < 0 ? b : a)));
        }
        expect([price, size, packs]).toEqual(best[need]);
      }),
      { numRuns: 60 },
    );
  });

  it.each<[string, number, readonly Offer[], readonly number[] | null]>([
    ["nothing offered", 5, [], null],
    ["nothing needed", 0, [{ size: 5, price: 3 }], [0]],
    ["twelve eggs are one dozen, whatever an egg weighs", (12 * 58) / 58, [{ size: 12, price: 360 }], [1]],
    ["a hair above a pack is met by it", 1000.0000001, [{ size: 1000, price: 3 }], [1]],
    ["a gram above a pack is not", 1001, [{ size: 1000, price: 3 }], [2]],
    [
      "what is free is taken",
      10,
      [
        { size: 4, price: 0 },
        { size: 10, price: 1 },
      ],
      [3, 0],
    ],
    ["a need beyond all kitchens", 1e20, [{ size: 1000, price: 3 }], [99999900000000000]],
  ])("%s", (_, need, offers, counts) => {
    expect(cover(need, offers)).toEqual(counts);
  });

  it("does not hang on prices without a common grid", () => {
    const offers = [
      { size: Math.PI, price: 999_999_937 },
      { size: Math.E, price: 999_999_893 },
    ];
    const before = performance.now();
    expect(cover(100, offers)).not.toBeNull();
    expect(performance.now() - before).toBeLessThan(1000);
  });
});
