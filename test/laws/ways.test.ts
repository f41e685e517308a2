import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import type { Prep, Segment } from "#engine/index.ts";
import { demandOf } from "#engine/plan-from-prep/exact/clash-demands.ts";
import { modelsOf } from "#engine/plan-from-prep/exact/clash-models.ts";
import { oracleFor } from "#engine/plan-from-prep/exact/clash-oracle.ts";
import { explainPlan } from "#engine/plan-from-prep/explain-plan.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { smallProblem } from "../help/small-problems.ts";
import { optimumByProgramme } from "../help/time-indexed.ts";
import { segment, use } from "../sittings/random-prep.ts";

/** Ways to do a thing: by hand, minded, on a burner, or in the fridge by itself. */
const otherWay: fc.Arbitrary<readonly Segment[]> = fc
  .record({
    kind: fc.constantFrom("hands", "mind", "burner", "fridge"),
    length: fc.integer({ min: 1, max: 8 }),
  })
  .map(({ kind, length }) =>
    kind === "burner"
      ? [{ ...segment(length, "hands", [use("burner")]), manned: true }]
      : kind === "fridge"
        ? [segment(length, "none", [use("fridge")])]
        : [segment(length, kind === "mind" ? "mind" : "hands")],
  );

/** Small problems in which up to two tasks may be done in other ways, up to two each. */
const problem: fc.Arbitrary<Prep> = fc
  .tuple(
    smallProblem,
    fc.array(fc.tuple(fc.nat(), fc.array(otherWay, { minLength: 1, maxLength: 2 })), {
      minLength: 1,
      maxLength: 2,
    }),
  )
  .map(([prep, picked]) => {
    const ways = new Map(picked.map(([at, other]) => [at % prep.tasks.length, other]));
    return {
      ...prep,
      tasks: prep.tasks.map((task, t) => {
        const other = ways.get(t);
        return other === undefined ? task : { ...task, ways: other };
      }),
    };
  });

/** The prep in each way of doing all of it. */
const everyWay = (prep: Prep): readonly Prep[] =>
  prep.tasks.reduce<readonly Prep[]>(
    (all, task, t) =>
      all.flatMap((one) =>
        [task.segments, ...(task.ways ?? [])].map((segments) => ({
          ...one,
          tasks: one.tasks.map((other, i) => (i === t ? { ...other, segments } : other)),
        })),
      ),
    [prep],
  );

const compare = (a: readonly number[], b: readonly number[]): number => {
  const at = a.findIndex((value, l) => value !== b[l]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
};

describe("a plan that may choose among ways", () => {
  // HiGHS solves a time-indexed programme of each choice; the least of all choices is the optimum.
  it("is as good, level by level, as the best choice that an integer programme finds, and says so", async () => {
    let found = 0;
    let chosen = 0;
    await fc.assert(
      fc.asyncProperty(problem, async (prep) => {
        let best: readonly number[] | null = null;
        for (const one of everyWay(prep)) {
          const optimum = await optimumByProgramme(one);
          if (optimum !== null && (best === null || compare(optimum, best) < 0)) best = optimum;
        }
        const plan = planFromPrep(prep, { tries: 100, proof: 200_000, seed: 3 }).value;
        expect(checkFromPlan(prep, plan)).toEqual([]);
        if (best === null) {
          expect(plan.unplaced.length).toBeGreaterThan(0);
          expect(plan.impossible).toBe(true);
          return;
        }
        found += 1;
        if (plan.placed.some((placed) => (placed.way ?? 0) > 0)) chosen += 1;
        expect(plan.unplaced).toEqual([]);
        expect(plan.objective.levels.map((level) => level.value)).toEqual(best);
        expect(plan.objective.levels.every((level) => level.proved)).toBe(true);
      }),
      { numRuns: 32, seed: 21 },
    );
    expect(found).toBeGreaterThanOrEqual(20);
    expect(chosen).toBeGreaterThanOrEqual(5);
  }, 300_000);

  it("claims no more than it looked at", () => {
    fc.assert(
      fc.property(problem, (prep) => {
        const little = planFromPrep(prep, { tries: 5, proof: 3, seed: 3 }).value;
        const much = planFromPrep(prep, { tries: 100, proof: 200_000, seed: 3 }).value;
        expect(checkFromPlan(prep, little)).toEqual([]);
        if (little.unplaced.length > 0 || much.unplaced.length > 0) return;
        for (const [l, { bound, proved }] of little.objective.levels.entries()) {
          const least = much.objective.levels[l]?.value ?? 0;
          expect(bound).toBeLessThanOrEqual(least);
          if (!proved || little.objective.levels[l]?.value !== least) return;
        }
      }),
      { numRuns: 20, seed: 22 },
    );
  }, 300_000);

  it("is refused by the checker in a way that there is not", () => {
    fc.assert(
      fc.property(problem, (prep) => {
        const plan = planFromPrep(prep, { tries: 5, seed: 3 }).value;
        const first = plan.placed[0];
        if (first === undefined) return;
        const wrong = { ...plan, placed: [{ ...first, way: 9 }, ...plan.placed.slice(1)] };
        expect(checkFromPlan(prep, wrong).map((v) => v.rule)).toContain("segment-gap");
      }),
      { numRuns: 10, seed: 23 },
    );
  }, 60_000);
});

describe("a problem with several ways and no plan", () => {
  it("names demands that clash in every way, of which each is needed", () => {
    let told = 0;
    fc.assert(
      fc.property(problem, (prep) => {
        const plan = planFromPrep(prep, { tries: 20, proof: 20_000, seed: 1 }).value;
        if (plan.impossible !== true) return;
        const { clashes = [], waysOut } = explainPlan(prep, plan, { conflicts: 40_000, tries: 0, seed: 1 });
        expect(waysOut).toEqual([]);
        expect(clashes.length).toBeGreaterThan(0);
        for (const clash of clashes) {
          told += 1;
          const { models } = modelsOf(prep);
          const tasks = new Set(prep.tasks.flatMap((task, t) => (clash.tasks.includes(task.id) ? [t] : [])));
          const mostLate = prep.courses.map(() => null);
          const purse = () => ({ each: 40_000, left: 40_000, keepGoing: () => true });
          const answers = models.map((model) => {
            const oracle = oracleFor(model, { tasks, mostLate }, purse());
            const named = oracle.groups.filter((group) =>
              clash.demands.some(
                (d) => JSON.stringify(d) === JSON.stringify(demandOf(prep, model, mostLate, group)),
              ),
            );
            const without = named.map((one) => oracle.ask(named.filter((group) => group !== one)));
            return { all: oracle.ask(named), without, count: named.length };
          });
          expect(answers.map(({ all }) => all)).toEqual(models.map(() => "clash"));
          // Without any one of them it can be done in some way.
          const most = Math.max(0, ...answers.map(({ count }) => count));
          if (clash.smallest && answers.every(({ count }) => count === most))
            for (let d = 0; d < most; d += 1)
              expect(answers.some(({ without }) => without[d] === "fits")).toBe(true);
        }
      }),
      { numRuns: 150, seed: 4 },
    );
    expect(told).toBeGreaterThanOrEqual(3);
  }, 120_000);
});
