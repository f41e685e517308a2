import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { count, type Dish, type Kitchen, minutes, moment, type Prep } from "#engine/index.ts";
import { panHolds, pansFor } from "#engine/larder/pans.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { sitting } from "../help/dishes.ts";
import { cooked } from "./methods.ts";

const crew = [{ name: "Ada", shifts: [{ from: moment(9 * 60), to: moment(22 * 60) }] }];
const pansOf = (...pans: readonly (readonly [string, number, number])[]): Kitchen => ({
  ...sitting([], 4).kitchen,
  pans: pans.map(([name, litres, many]) => ({ name, litres, count: count(many) })),
});
const menuOf = (dishes: readonly Dish[], kitchen: Kitchen, covers = 4) => {
  const at = sitting(
    dishes.map((d) => d.source),
    covers,
    { crew, kitchen },
  );
  return menuFromDishes(at, dishes).value;
};
const worked = (dishes: readonly Dish[], kitchen: Kitchen, covers = 4): Prep =>
  prepFromMenu(menuOf(dishes, kitchen, covers)).value;
const washings = (prep: Prep): readonly string[] =>
  prep.tasks.filter((t) => t.kind === "wash").map((t) => t.objects.join());

const stew = (source: string): Dish =>
  cooked(
    source,
    4,
    [1000, 400],
    [
      { id: "a", technique: "simmer", minutes: 30, takes: [0, 1] },
      { id: "b", technique: "reduce", minutes: 20, takes: ["a"] },
    ],
  );

describe("the vessels of a menu", () => {
  it("are one pan from the first task to the plate, where the food goes on in it", () => {
    const prep = worked([stew("stew")], pansOf(["saucepan", 3, 1], ["large pan", 8, 1]));
    expect(prep.stays?.map((s) => [s.resource, s.amount, s.to])).toEqual([["3 l pan", 1, null]]);
    expect(prep.resources.find((r) => r.id === "3 l pan")?.capacity).toBe(2);
    expect(washings(prep)).toEqual([]);
  });

  it("need no washing-up in the plan where there are enough, and it is told as minutes after the service", () => {
    const { value, findings } = prepFromMenu(menuOf([stew("one"), stew("two")], pansOf(["saucepan", 3, 2])));
    expect(washings(value)).toEqual([]);
    expect(findings.find((f) => f.code === "washing-up-after")?.facts).toEqual({ vessels: 2, minutes: 4 });
  });

  it("are washed up in between where the same pan is needed again, as long as the kitchen says it takes", () => {
    const first = cooked(
      "cold",
      4,
      [1000],
      [
        { id: "a", technique: "simmer", minutes: 20, takes: [0] },
        { id: "b", technique: "chill", minutes: 120, takes: ["a"] },
      ],
    );
    const kitchen = pansOf(["saucepan", 3, 1]);
    const measured = { ...kitchen, pans: kitchen.pans.map((pan) => ({ ...pan, washMinutes: minutes(7) })) };
    for (const [own, length] of [
      [kitchen, 2],
      [measured, 7],
    ] as const) {
      const prep = worked([first, stew("hot")], own);
      const wash = prep.tasks.find((t) => t.kind === "wash");
      expect(wash?.dish).toBe("cold");
      expect(wash?.segments.map((s) => s.minutes.likely)).toEqual([length]);
      const plan = planFromPrep(prep, { tries: 20, seed: 1 }).value;
      expect(plan.unplaced).toEqual([]);
      expect(checkFromPlan(prep, plan)).toEqual([]);
    }
  });

  it("hold in all their fillings what is cooked in them, and are never more than there are", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 1, max: 3 }),
        (covers, small, large, many) => {
          const kitchen = pansOf(["saucepan", 3, small], ["large pan", 8, large]);
          const dishes = Array.from({ length: many }, (_, i) => stew(`stew ${i}`));
          const menu = menuOf(dishes, kitchen, covers);
          for (const { vessels, dish } of menu.dishes)
            for (const use of vessels) {
              const action = dish.steps.flatMap((s) => s.actions).find((a) => a.id === use.action)!;
              const pan = pansFor(kitchen, action).find((p) => p.name === use.name)!;
              expect(use.fillings * panHolds(pan, action)).toBeGreaterThanOrEqual(use.litres - 1e-6);
            }
          const prep = prepFromMenu(menu).value;
          const plan = planFromPrep(prep, { tries: 5, seed: 1 }).value;
          expect(checkFromPlan(prep, plan)).toEqual([]);
          for (const stay of prep.stays ?? []) {
            const there = prep.resources.find((r) => r.id === stay.resource)?.capacity ?? 0;
            expect(stay.amount).toBeLessThanOrEqual(there);
          }
        },
      ),
      { numRuns: 20 },
    );
  });
});
