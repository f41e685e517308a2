import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { count, type Dish, exactly, type Menu } from "#engine/index.ts";
import { scaleAmounts } from "#engine/menu-from-dishes/measure-ingredient.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { sittingFor, someDishes } from "../help/arbitrary-menus.ts";

const likelies = (menu: Menu): readonly number[] =>
  menu.dishes.flatMap((d) =>
    d.versions.flatMap((v) =>
      v.ingredients.flatMap((m) => [m.edible?.likely ?? 0, m.asPurchased?.likely ?? 0]),
    ),
  );

const serving = (dishes: readonly Dish[], portions: number): readonly Dish[] =>
  dishes.map((d) => ({ ...d, portions: exactly(count(portions)) }));

const close = (a: readonly number[], b: readonly number[]): void => {
  expect(a).toHaveLength(b.length);
  a.forEach((n, i) => {
    expect(Math.abs(n - b[i]!)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(n)));
  });
};

const factor = fc.double({ min: 0.01, max: 50, noNaN: true });

describe("scaling", () => {
  it("by a and then by b equals scaling by ab", () => {
    fc.assert(
      fc.property(someDishes, factor, factor, (dishes, a, b) => {
        for (const m of menuFromDishes(sittingFor(dishes, 8), dishes).value.dishes[0]!.versions[0]!
          .ingredients) {
          const twice = scaleAmounts(scaleAmounts(m, a), b);
          const once = scaleAmounts(m, a * b);
          close(
            [twice.edible?.likely ?? 0, twice.asPurchased?.high ?? 0, twice.pieces?.low ?? 0],
            [once.edible?.likely ?? 0, once.asPurchased?.high ?? 0, once.pieces?.low ?? 0],
          );
        }
      }),
    );
  });

  it("of a menu to the covers a card serves leaves its amounts as they are", () => {
    fc.assert(
      fc.property(someDishes, (dishes) => {
        const one = dishes.slice(0, 1).map((d) => ({ ...d, swaps: [], portions: exactly(count(6)) }));
        const sitting = sittingFor(one, 6, { guests: [], spare: 0 as never });
        const [version] = menuFromDishes(sitting, one).value.dishes[0]!.versions;
        expect(version!.factor).toBe(1);
      }),
    );
  });

  it("depends on covers and on the card's portions only through their ratio", () => {
    fc.assert(
      fc.property(
        someDishes,
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 9 }),
        (dishes, k, portions) => {
          const plain = { guests: [], spare: 0 as never };
          const small = serving(dishes, portions);
          const large = serving(dishes, portions * k);
          close(
            likelies(menuFromDishes(sittingFor(small, 12, plain), small).value),
            likelies(menuFromDishes(sittingFor(large, 12 * k, plain), large).value),
          );
        },
      ),
    );
  });
});
