import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Dish,
  type Kitchen,
  type Menu,
  type Prep,
  readCard,
  type Segment,
  share,
} from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { purchaseFromMenu } from "#engine/purchase-from-menu/purchase-from-menu.ts";
import { sheetFromPrep } from "#engine/sheet-from-prep/sheet-from-prep.ts";
import { sitting } from "../help/dishes.ts";
import { someKitchen, writtenCard } from "../help/written-cards.ts";

const menuOf = (dish: Dish, covers: number, kitchen: Kitchen): Menu =>
  menuFromDishes(sitting([dish.source], covers, { guests: [], spare: share(0), kitchen }), [dish]).value;

/** On the average: likely values do not add when work is told together, means do. */
const mean = ({ minutes: { low, likely, high } }: Segment): number => (low + 4 * likely + high) / 6;

const minutesOf = ({ tasks }: Prep, which: (s: Segment) => boolean): number =>
  tasks
    .filter((task) => task.kind !== "wash")
    .flatMap((task) => task.segments)
    .reduce((sum, s) => sum + (which(s) ? mean(s) : 0), 0);

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** A thousandth: what freezes and cools depends a hair on how much boiled away. */
const hair = 1e-3;

const covers = fc.integer({ min: 1, max: 400 });
const more = fc.integer({ min: 1, max: 300 });

describe("more covers", () => {
  it("never take less work by hand, nor less time one thing after the other", () => {
    fc.assert(
      fc.property(writtenCard, someKitchen, fc.integer({ min: 1, max: 7 }), (dish, kitchen, first) => {
        let before: Prep | null = null;
        for (let n = first; n <= 400; n = Math.ceil(n * 1.25) + 1) {
          const now = prepFromMenu(menuOf(dish, n, kitchen)).value;
          for (const which of [(s: Segment) => s.attention === "hands", () => true])
            if (before !== null)
              expect(minutesOf(now, which)).toBeGreaterThanOrEqual(minutesOf(before, which) * (1 - hair));
          before = now;
        }
      }),
      { numRuns: 30 },
    );
  });

  it("never need less of anything to be bought", () => {
    fc.assert(
      fc.property(writtenCard, someKitchen, covers, more, (dish, kitchen, n, m) => {
        const at = (many: number) => purchaseFromMenu(menuOf(dish, many, kitchen)).value.lines;
        const large = new Map(at(n + m).map((line) => [line.name, line.needed]));
        for (const line of at(n))
          expect(large.get(line.name) ?? 0).toBeGreaterThanOrEqual(line.needed * (1 - 1e-9));
      }),
      { numRuns: 100 },
    );
  });

  it("never fill a vessel over what it is filled to, and never leave out what goes in", () => {
    fc.assert(
      fc.property(writtenCard, someKitchen, covers, (dish, kitchen, n) => {
        for (const use of menuOf(dish, n, kitchen).dishes[0]?.vessels ?? []) {
          const amount = use.kind === "tray" ? use.grams : use.litres;
          expect(use.fillings * use.holds).toBeGreaterThanOrEqual(amount - 1e-6);
          expect(use.fill).toBeLessThanOrEqual(1 + 1e-9);
        }
      }),
    );
  });
});

describe("mass", () => {
  it("is the same on the menu, on the sheet and in the purchase, and adds up to the plate", () => {
    fc.assert(
      fc.property(writtenCard, someKitchen, covers, (dish, kitchen, n) => {
        const menu = menuOf(dish, n, kitchen);
        const version = menu.dishes[0]!.versions[0]!;
        const [sheet] = sheetFromPrep(menu, prepFromMenu(menu).value);
        const edible = sum(version.ingredients.map((m) => m.edible?.likely ?? 0));
        expect(Math.abs(sheet!.grams - edible)).toBeLessThanOrEqual(edible * hair);
        const bought = sum(purchaseFromMenu(menu).value.lines.map((line) => line.needed));
        const asked = sum(version.ingredients.map((m) => m.asPurchased?.likely ?? 0));
        expect(Math.abs(bought - asked)).toBeLessThanOrEqual(asked * hair);
        sheet!.lines.forEach((line, i) => {
          const own = version.ingredients[i]!;
          if (line.amount?.unit !== "g") return;
          expect([own.edible?.likely, own.asPurchased?.likely]).toContain(line.amount.exact);
        });
      }),
    );
  });

  it("at the card's own covers is the card's, line by line", () => {
    fc.assert(
      fc.property(writtenCard, someKitchen, (dish, kitchen) => {
        const own = dish.portions?.likely ?? 1;
        const version = menuOf(dish, own, kitchen).dishes[0]!.versions[0]!;
        expect(version.factor).toBe(1);
        for (const m of version.ingredients) {
          const line = dish.ingredients.find((i) => i.index === m.ingredient)!;
          expect(m.adjusted).toEqual([]);
          expect(line.weightBasis === "as-purchased" ? m.asPurchased : m.edible).toEqual(line.grams);
        }
      }),
    );
  });
});

describe("what is left of the liquid", () => {
  it("is in step with the portions, and so is the starch that is stirred into it", () => {
    const text =
      "Thickened broth\n\nServes 4\n\n2 tsp cornflour\n1 litre vegetable stock\n400 g carrots\n\nMethod\n\n1. Put the carrots in the stock, bring to the boil and simmer for 30 minutes.\n2. Stir in the cornflour.\n";
    fc.assert(
      fc.property(someKitchen, fc.integer({ min: 4, max: 600 }), (kitchen, n) => {
        const dish = readCard(text, "broth").value;
        const version = menuOf(dish, n, kitchen).dishes[0]!.versions[0]!;
        const of = (food: string) => version.ingredients.find((m) => m.food === food)!;
        const stock = of("vegetable-stock");
        const times = stock.adjusted.reduce((product, a) => product * a.factor, 1);
        // What boils away is 1 − times of what the card loses, at the most: never more than the card has in step.
        expect(times).toBeGreaterThan(0.5);
        expect(times).toBeLessThanOrEqual(1 + 1e-9);
        expect(of("cornflour").adjusted).toEqual([]);
        expect(of("cornflour").edible!.likely / n).toBeCloseTo(
          menuOf(dish, 4, kitchen).dishes[0]!.versions[0]!.ingredients.find((m) => m.food === "cornflour")!
            .edible!.likely / 4,
          9,
        );
      }),
    );
  });
});
