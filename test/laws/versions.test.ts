import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Dish, type Guest, share } from "#engine/index.ts";
import { againstNeed } from "#engine/larder/against-need.ts";
import { foodById } from "#engine/larder/foods.ts";
import { needById, needs } from "#engine/larder/needs.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { dish, ingredient, sitting } from "../help/dishes.ts";

const foods = [
  "walnut",
  "double-cream",
  "egg",
  "prawn",
  "salmon",
  "plain-flour",
  "leek",
  "celery",
  "honey",
  "sesame-seed",
];
const comes = ["pumpkin-seed", "coconut-milk", "parsnip", "rice-flour", "walnut", "salmon"];
const someNeeds = fc.subarray(
  needs.map((n) => n.id),
  { minLength: 0, maxLength: 3 },
);
const needOrNot = fc.oneof(
  { weight: 9, arbitrary: someNeeds },
  { weight: 1, arbitrary: fc.constant(["no-moonlight"]) },
);

const guestList: fc.Arbitrary<readonly Guest[]> = fc
  .array(needOrNot, { maxLength: 8 })
  .map((lists) => lists.map((list, i) => ({ name: `guest ${i}`, needs: list })));

const aDish: fc.Arbitrary<Dish> = fc
  .tuple(
    fc.array(fc.constantFrom(...foods), { minLength: 1, maxLength: 6 }),
    fc.array(
      fc.record({
        needs: fc.subarray(["no-nuts", "vegan", "no-milk", "coeliac", "no-fish"]),
        out: fc.uniqueArray(fc.nat(5), { minLength: 1, maxLength: 3 }),
        comes: fc.array(fc.constantFrom(...comes), { maxLength: 2 }),
      }),
      { maxLength: 5 },
    ),
  )
  .map(([listed, swaps]) =>
    dish(
      "dish",
      4,
      listed.map((food, i) => ingredient(i, food, 100)),
      {
        swaps: swaps.map((swap) => ({
          text: "",
          span: { start: 0, end: 0 },
          needs: swap.needs,
          out: swap.out.filter((place) => place < listed.length),
          comes: swap.comes.map((food) => ({ food, name: food, grams: null, amounts: [] })),
        })),
      },
    ),
  );

describe("versions", () => {
  it("never give a guest what the tables rule out for one of their needs", () => {
    let looked = 0;
    fc.assert(
      fc.property(aDish, guestList, (card, guests) => {
        const { value } = menuFromDishes(sitting(["dish"], 12, { guests }), [card]);
        for (const version of value.dishes[0]!.versions)
          for (const name of version.guests)
            for (const id of guests.find((g) => g.name === name)!.needs) {
              const need = needById(id)!;
              for (const m of version.ingredients) {
                looked += 1;
                const grade = againstNeed(foodById(m.food!)!, need);
                expect([null, "check"], `${name} has ${id}, and ${m.food}`).toContain(grade);
              }
            }
      }),
      { numRuns: 300 },
    );
    expect(looked).toBeGreaterThan(300);
  });

  it("feed every cover once: the portions are the covers, with spare and without the unserved", () => {
    fc.assert(
      fc.property(
        aDish,
        guestList,
        fc.integer({ min: 0, max: 60 }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (card, guests, covers, spare) => {
          const { value } = menuFromDishes(sitting(["dish"], covers, { guests, spare: share(spare) }), [
            card,
          ]);
          const { versions, unserved } = value.dishes[0]!;
          const fed = Math.max(covers, guests.length) - new Set(unserved.map((u) => u.guest)).size;
          const portions = versions.reduce((sum, v) => sum + v.portions, 0);
          const extra = fed === 0 ? 0 : Math.ceil(spare * Math.max(covers, guests.length) - 1e-9);
          expect(portions).toBe(fed + extra);
          const named = [...versions.flatMap((v) => v.guests), ...new Set(unserved.map((u) => u.guest))];
          expect([...named].sort()).toEqual(guests.map((g) => g.name).sort());
          expect(new Set(versions.map((v) => v.id)).size).toBe(versions.length);
        },
      ),
    );
  });
});
