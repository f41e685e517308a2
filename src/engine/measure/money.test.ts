import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { divideMoney, priceAtTarget, shareOut, taxOn } from "./money.ts";
import { roundDownToClaim } from "./round-down-to-claim.ts";
import { roundHalfUp } from "./round-half-up.ts";
import { roundUpToPack } from "./round-up-to-pack.ts";
import { roundUpToPortion } from "./round-up-to-portion.ts";
import { minor, share } from "./units.ts";

const weights = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 20 });

describe("shareOut", () => {
  it("adds up exactly and keeps each part within one unit of its share", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), weights, (total, w) => {
        const sum = w.reduce((a, b) => a + b, 0);
        fc.pre(sum > 1e-6);
        const parts = shareOut(minor(total), w);
        expect(parts.reduce((a, b) => a + b, 0)).toBe(total);
        parts.forEach((part, i) => {
          expect(Math.abs(part - (total * w[i]!) / sum)).toBeLessThan(1 + 1e-6);
        });
      }),
    );
  });

  it.each([
    [100, [1, 1, 1], [34, 33, 33]],
    [1, [0.2, 0.8], [0, 1]],
    [7, [0, 0], [0, 0]],
    [7, [], []],
    [0, [1, 2], [0, 0]],
  ])("%i by %j is %j", (total, w, parts) => {
    expect(shareOut(minor(total), w)).toEqual(parts);
  });
});

describe("prices and tax", () => {
  it("the cost is the target share of the price within half a unit", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e7 }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (cost, target) => {
          const price = priceAtTarget(cost, share(target));
          expect(Math.abs(price * target - cost)).toBeLessThanOrEqual(0.5 * target + 1e-6 * cost);
        },
      ),
    );
  });

  it.each([
    [divideMoney(100, 3), 33],
    [divideMoney(100, 0), 0],
    [priceAtTarget(100, share(0)), 0],
    [taxOn(minor(999), share(0.2)), 200],
    [taxOn(minor(2), share(0.25)), 1],
    [taxOn(minor(100), share(-1)), 0],
  ])("%i is %i", (got, wanted) => {
    expect(got).toBe(wanted);
  });
});

describe("roundings, each after its reason", () => {
  it.each([
    [roundHalfUp(0.5), 1],
    [roundHalfUp(1.005 * 100), 101],
    [roundHalfUp(2.4999), 2],
    [roundUpToPortion(1.2), 2],
    [roundUpToPortion(0.05 * 20), 1],
    [roundUpToPortion(0), 0],
    [roundDownToClaim(5.9), 5],
    [roundDownToClaim(0.4), 1],
    [roundDownToClaim(2.9999999999), 3],
    [roundUpToPack(1001, 1000), 2],
    [roundUpToPack(1000, 1000), 1],
    [roundUpToPack(0, 1000), 0],
    [roundUpToPack(10, 0), 0],
  ])("%d is %d", (got, wanted) => {
    expect(got).toBe(wanted);
  });
});
