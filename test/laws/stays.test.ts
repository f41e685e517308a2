import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { moment, type Plan, type Prep, type VesselStay } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { goal, lag, prepOf, segment, task } from "../sittings/random-prep.ts";

/** One pot of food: how long it is cooked, how long it is washed up after, when it is due, how large its pan is. */
type Pot = {
  readonly cook: number;
  readonly wash: number;
  readonly due: number;
  readonly large: boolean;
  readonly amount: number;
};

const pot: fc.Arbitrary<Pot> = fc.record({
  cook: fc.integer({ min: 3, max: 14 }),
  wash: fc.integer({ min: 1, max: 4 }),
  due: fc.integer({ min: 740, max: 765 }),
  large: fc.boolean(),
  amount: fc.integer({ min: 1, max: 2 }),
});

const pans = (large: number, small: number): Prep["resources"] => [
  { id: "3 l pan", capacity: large + small },
  { id: "8 l pan", capacity: large, alsoIn: ["3 l pan"] },
];

/** Pots that are each plated from the pan they are cooked in, by as many cooks as there are pots. */
const kitchenOf = (
  pots: readonly Pot[],
  large: number,
  small: number,
  name = (n: number): string => `p${n}`,
): Prep => {
  const tasks = pots.flatMap((p, i) => [
    task(name(i), i, [segment(p.cook, "hands")], { finishing: true, kind: "plate" }),
    task(`${name(i)} wash`, i, [segment(p.wash, "none")], { kind: "wash" }),
  ]);
  const stays = pots.flatMap((p, i): VesselStay[] => {
    const stay = { amount: p.amount, from: name(i), to: `${name(i)} wash` };
    return [{ resource: "3 l pan", ...stay }, ...(p.large ? [{ resource: "8 l pan", ...stay }] : [])];
  });
  return prepOf(
    tasks,
    pots.map((_, i) => ({ ...lag(name(i), `${name(i)} wash`), reason: "wash-before" as const })),
    pots.map((p, i) => goal(i, p.due, [name(i)])),
    {
      resources: pans(large, small),
      stays,
      levels: ["late"],
      crew: pots.map((_, i) => ({ name: `cook ${i}`, shifts: [{ from: moment(600), to: moment(900) }] })),
    },
  );
};

/** The least lateness in all, by trying every landing of every pot. */
const leastLate = (pots: readonly Pot[], large: number, small: number): number => {
  const most = pots.reduce((sum, p) => sum + p.cook + p.wash, 0);
  let best = Number.POSITIVE_INFINITY;
  const lands: number[] = [];
  const fits = (): boolean =>
    lands.every((at, i) => {
      const from = at - (pots[i]?.cook ?? 0);
      let all = 0;
      let big = 0;
      lands.forEach((other, o) => {
        const p = pots[o]!;
        if (other - p.cook > from || from >= other + p.wash) return;
        all += p.amount;
        big += p.large ? p.amount : 0;
      });
      return all <= large + small && big <= large;
    });
  const walk = (i: number, late: number): void => {
    if (late >= best) return;
    if (i === pots.length) {
      if (fits()) best = late;
      return;
    }
    for (let slip = 0; slip <= most; slip++) {
      lands[i] = (pots[i]?.due ?? 0) + slip;
      walk(i + 1, late + slip);
    }
    lands.length = i;
  };
  walk(0, 0);
  return best;
};

const planned = (prep: Prep): Plan => planFromPrep(prep, { tries: 30, proof: 20_000, seed: 1 }).value;

const sized = fc.record({
  pots: fc.array(pot, { minLength: 2, maxLength: 3 }),
  large: fc.integer({ min: 2, max: 3 }),
  small: fc.integer({ min: 0, max: 2 }),
});

describe("vessels in use", () => {
  it("land their courses as soon as any order of them can, and that is proved", () => {
    fc.assert(
      fc.property(sized, ({ pots, large, small }) => {
        const plan = planned(kitchenOf(pots, large, small));
        expect(checkFromPlan(kitchenOf(pots, large, small), plan)).toEqual([]);
        expect(plan.unplaced).toEqual([]);
        expect(plan.objective.levels[0]).toMatchObject({
          proved: true,
          value: leastLate(pots, large, small),
        });
      }),
      { numRuns: 60 },
    );
  });

  it("land no later with one more pan, and no otherwise under other names", () => {
    fc.assert(
      fc.property(sized, ({ pots, large, small }) => {
        const plan = planned(kitchenOf(pots, large, small));
        const late = (other: Plan): number => other.objective.lateMinutes;
        expect(late(planned(kitchenOf(pots, large + 1, small)))).toBeLessThanOrEqual(late(plan));
        expect(late(planned(kitchenOf(pots, large, small + 1)))).toBeLessThanOrEqual(late(plan));
        const renamed = planned(kitchenOf(pots, large, small, (n) => `z${9 - n}`));
        expect(renamed.placed.map((p) => [p.start, p.cook]).toSorted()).toEqual(
          plan.placed.map((p) => [p.start, p.cook]).toSorted(),
        );
      }),
      { numRuns: 25 },
    );
  });

  it("are never more than there are, which the checker sees for itself", () => {
    const pots: Pot[] = [0, 1].map(() => ({ cook: 10, wash: 3, due: 750, large: true, amount: 2 }));
    const roomy = planned(kitchenOf(pots, 4, 0));
    expect(checkFromPlan(kitchenOf(pots, 4, 0), roomy)).toEqual([]);
    const broken = checkFromPlan(kitchenOf(pots, 3, 0), roomy);
    expect(new Set(broken.map((b) => b.rule))).toEqual(new Set(["vessel-over"]));
  });

  it("are free again only once they are washed up", () => {
    const pots: Pot[] = [
      { cook: 10, wash: 4, due: 750, large: true, amount: 1 },
      { cook: 10, wash: 4, due: 760, large: true, amount: 1 },
    ];
    // One pan: ten minutes to cook the second one leave none for washing up the pan before it.
    expect(planned(kitchenOf(pots, 1, 0)).objective.lateMinutes).toBe(4);
    expect(planned(kitchenOf(pots, 2, 0)).objective.lateMinutes).toBe(0);
  });

  it("keep a vessel for good that nobody washes up", () => {
    const pots: Pot[] = [
      { cook: 10, wash: 4, due: 750, large: true, amount: 1 },
      { cook: 10, wash: 4, due: 790, large: true, amount: 1 },
    ];
    const prep = kitchenOf(pots, 1, 0);
    const kept = {
      ...prep,
      stays: (prep.stays ?? []).map((s) => (s.from === "p0" ? { ...s, to: null } : s)),
    };
    expect(planned(prep).objective.lateMinutes).toBe(0);
    const plan = planned(kept);
    expect(checkFromPlan(kept, plan)).toEqual([]);
    // The pot that keeps its pan comes last then.
    expect(plan.courses.find((c) => c.course === 0)?.lateMinutes).toBeGreaterThan(0);
  });
});
