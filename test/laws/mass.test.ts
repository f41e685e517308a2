import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { costFromPurchase } from "#engine/cost-from-purchase/cost-from-purchase.ts";
import type { Menu, PurchaseLine } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { purchaseFromMenu } from "#engine/purchase-from-menu/purchase-from-menu.ts";
import { sittingFor, someDishes, somePacks } from "../help/arbitrary-menus.ts";

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
const near = (a: number, b: number): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(a), Math.abs(b)));
};

/** As purchased on the menu, for one ingredient of one version. */
const onMenu = (menu: Menu, dish: string, version: string, food: string): number =>
  sum(
    menu.dishes
      .filter((d) => d.dish.source === dish)
      .flatMap((d) => d.versions.filter((v) => v.id === version))
      .flatMap((v) => v.ingredients.filter((m) => (m.food ?? m.name) === food))
      .map((m) => m.asPurchased?.likely ?? 0),
  );

const isJoint = (line: PurchaseLine): boolean =>
  ["egg", "lemon", "egg-white", "egg-yolk", "lemon-juice", "lemon-zest"].includes(line.food ?? "");

describe("mass is conserved", () => {
  it("from the card to the menu: grams × factor × what was adjusted is the edible or as-purchased weight, and trim stands between them", () => {
    fc.assert(
      fc.property(someDishes, fc.integer({ min: 1, max: 90 }), (dishes, covers) => {
        const { value: menu } = menuFromDishes(sittingFor(dishes, covers), dishes);
        for (const { dish, versions } of menu.dishes)
          for (const { factor, ingredients } of versions)
            for (const m of ingredients) {
              const line = dish.ingredients.find((i) => i.index === m.ingredient);
              if (m.edible === null || m.asPurchased === null) continue;
              expect(m.edible.likely).toBeLessThanOrEqual(m.asPurchased.likely * (1 + 1e-9));
              const partOfFood = m.portion !== null || m.food === "egg-yolk" || m.food === "egg-white";
              if (line?.grams == null || partOfFood) continue;
              const basis = line.weightBasis === "as-purchased" ? m.asPurchased : m.edible;
              const times = m.adjusted.reduce((product, a) => product * a.factor, factor);
              near(basis.likely, line.grams.likely * times);
              near(basis.low, line.grams.low * times);
              near(basis.high, line.grams.high * times);
            }
      }),
    );
  });

  it("from the menu to the purchase, line by line, and from there to what is used and what is left", () => {
    fc.assert(
      fc.property(someDishes, somePacks, fc.integer({ min: 1, max: 90 }), (dishes, packs, covers) => {
        const { value: menu } = menuFromDishes(sittingFor(dishes, covers, { packs }), dishes);
        const { value: purchase } = purchaseFromMenu(menu);
        for (const line of purchase.lines) {
          near(sum(line.demands.map((d) => d.grams)), line.needed);
          expect(line.most).toBeGreaterThanOrEqual(line.needed * (1 - 1e-9));
          if (line.packs.length > 0 || line.free) near(line.needed + line.leftOver, line.bought);
          if (isJoint(line)) continue;
          for (const { dish, version } of line.demands) {
            const demanded = sum(
              line.demands.filter((d) => d.dish === dish && d.version === version).map((d) => d.grams),
            );
            near(demanded, onMenu(menu, dish, version, line.food ?? line.name));
          }
        }
        const foods = menu.dishes.flatMap((d) => d.versions.flatMap((v) => v.ingredients));
        expect(sum(purchase.lines.map((l) => l.demands.length))).toBe(foods.length);
      }),
    );
  });

  it("of parts bought together: never more than alone, and every part that is asked for is there", () => {
    fc.assert(
      fc.property(someDishes, fc.integer({ min: 1, max: 90 }), (dishes, covers) => {
        const { value: menu } = menuFromDishes(sittingFor(dishes, covers), dishes);
        const all = menu.dishes.flatMap((d) => d.versions.flatMap((v) => v.ingredients));
        const eggs = purchaseFromMenu(menu).value.lines.find((l) => l.food === "egg");
        if (eggs === undefined) return;
        const of = (food: string): number =>
          sum(all.filter((m) => m.food === food).map((m) => m.asPurchased?.likely ?? 0));
        near(eggs.needed, of("egg") + Math.max(of("egg-yolk"), of("egg-white")));
      }),
    );
  });

  it("of money: the dishes and what is left add up to what is bought, to the penny", () => {
    fc.assert(
      fc.property(someDishes, somePacks, fc.integer({ min: 1, max: 90 }), (dishes, packs, covers) => {
        const { value: menu } = menuFromDishes(sittingFor(dishes, covers, { packs }), dishes);
        const { value: purchase } = purchaseFromMenu(menu);
        const { value: cost } = costFromPurchase(menu, purchase);
        expect(sum(cost.dishes.map((d) => d.used)) + cost.leftOver).toBe(cost.bought);
        expect(cost.used + cost.leftOver).toBe(cost.bought);
        expect(cost.bought).toBe(sum(purchase.lines.map((l) => l.cost)));
        for (const n of [
          cost.leftOver,
          cost.perCover,
          cost.priceNet,
          cost.tax,
          ...cost.dishes.map((d) => d.used),
        ]) {
          expect(Number.isInteger(n)).toBe(true);
          expect(n).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});
