import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { cover, type Offer } from "#engine/purchase-from-menu/cover.ts";
import { purchaseFromMenu } from "#engine/purchase-from-menu/purchase-from-menu.ts";
import { sittingFor, someDishes, somePacks } from "../help/arbitrary-menus.ts";

const offers = fc.array(
  fc.record({ size: fc.integer({ min: 1, max: 5000 }), price: fc.integer({ min: 1, max: 2000 }) }),
  { minLength: 1, maxLength: 5 },
);
const need = fc.integer({ min: 1, max: 40_000 });

const total = (n: number, from: readonly Offer[], what: "size" | "price"): number =>
  (cover(n, from) ?? []).reduce((sum, packs, i) => sum + packs * from[i]![what], 0);

describe("covering a need with packs", () => {
  it("buys at least what is needed", () => {
    fc.assert(
      fc.property(need, offers, (n, from) => {
        expect(total(n, from, "size")).toBeGreaterThanOrEqual(n * (1 - 1e-6));
      }),
    );
  });

  it("costs no more together than apart", () => {
    fc.assert(
      fc.property(need, need, offers, (a, b, from) => {
        expect(total(a + b, from, "price")).toBeLessThanOrEqual(
          total(a, from, "price") + total(b, from, "price"),
        );
      }),
    );
  });

  it("never costs less nor brings less for more", () => {
    fc.assert(
      fc.property(need, need, offers, (a, b, from) => {
        expect(total(a, from, "price")).toBeLessThanOrEqual(total(a + b, from, "price"));
        expect(total(a, from, "size")).toBeLessThanOrEqual(total(a + b, from, "size"));
      }),
    );
  });

  it("leaves less over than the smallest pack used", () => {
    fc.assert(
      fc.property(need, offers, (n, from) => {
        const used = (cover(n, from) ?? []).flatMap((packs, i) => (packs > 0 ? [from[i]!.size] : []));
        expect(total(n, from, "size") - n).toBeLessThan(Math.min(...used));
      }),
    );
  });

  it("does not depend on the order of the price list", () => {
    fc.assert(
      fc.property(need, offers, (n, from) => {
        const back = [...from].reverse();
        expect(total(n, back, "price")).toBe(total(n, from, "price"));
        expect(total(n, back, "size")).toBe(total(n, from, "size"));
      }),
    );
  });
});

describe("the purchase of a menu", () => {
  it("buys at least what is needed on every line that a list has", () => {
    fc.assert(
      fc.property(someDishes, somePacks, fc.integer({ min: 1, max: 90 }), (dishes, packs, covers) => {
        const { value, findings } = purchaseFromMenu(
          menuFromDishes(sittingFor(dishes, covers, { packs }), dishes).value,
        );
        const missing = findings.filter((f) => f.code === "price-missing").length;
        const unpriced = value.lines.filter((l) => !l.free && l.needed > 0 && l.packs.length === 0);
        expect(missing).toBeLessThanOrEqual(unpriced.length);
        const none = findings.filter((f) => f.code === "prices-none").length;
        expect(missing + none > 0).toBe(unpriced.length > 0);
        expect(none, "no price at all is told once").toBe(packs.length === 0 && unpriced.length > 0 ? 1 : 0);
        for (const line of value.lines)
          if (line.packs.length > 0) expect(line.bought).toBeGreaterThanOrEqual(line.needed);
        expect(value.total).toBe(value.suppliers.reduce((sum, s) => sum + s.total, 0));
      }),
    );
  });

  it("needs no less of anything bought for more covers, as long as somebody has the dish as written", () => {
    fc.assert(
      fc.property(
        someDishes,
        somePacks,
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 1, max: 60 }),
        (dishes, packs, covers, more) => {
          const lines = (n: number) =>
            purchaseFromMenu(menuFromDishes(sittingFor(dishes, n, { packs }), dishes).value).value.lines;
          const after = new Map(lines(covers + more).map((l) => [l.food ?? l.name, l]));
          for (const line of lines(covers)) {
            const then = after.get(line.food ?? line.name);
            expect(then?.needed ?? 0).toBeGreaterThanOrEqual(line.needed * (1 - 1e-9));
            expect(then?.bought ?? 0).toBeGreaterThanOrEqual(line.bought * (1 - 1e-9));
            expect(then?.cost ?? 0).toBeGreaterThanOrEqual(line.cost);
          }
        },
      ),
    );
  });
});
