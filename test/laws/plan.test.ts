import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { moment, type Plan, type Prep } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { goal, lag, prepOf, randomPrep, segment, task } from "../sittings/random-prep.ts";

const effort = { tries: 30, seed: 7 };
const planned = (prep: Prep): Plan => planFromPrep(prep, effort).value;

describe("a plan", () => {
  it("keeps every limit, whatever the work", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        expect(checkFromPlan(prep, planned(prep))).toEqual([]);
      }),
    );
  });

  it("is the same for the same input", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        expect(JSON.stringify(planFromPrep(prep, effort))).toBe(JSON.stringify(planFromPrep(prep, effort)));
      }),
      { numRuns: 20 },
    );
  });

  it("holds for tasks in any order and under other names", () => {
    fc.assert(
      fc.property(randomPrep, fc.integer(), (prep, turn) => {
        const n = prep.tasks.length;
        const tasks = prep.tasks.map((_, i) => prep.tasks[(i + Math.abs(turn)) % n]!);
        const turned = { ...prep, tasks };
        expect(checkFromPlan(turned, planned(turned))).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  it("says of every task what it touches: causes name tasks and cooks that are there, and tight", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planned(prep);
        const at = new Map(plan.placed.map((p) => [p.task, p]));
        for (const placed of plan.placed) {
          expect(placed.because.length).toBeGreaterThan(0);
          for (const cause of placed.because) {
            if (cause.kind === "cook") {
              expect(cause.cook).toBe(placed.cook);
              expect(at.get(cause.task)?.cook).toBe(cause.cook);
            }
            if (cause.kind === "oven") expect(at.get(cause.task)?.oven).toBe(cause.oven);
            if ("task" in cause) expect(at.has(cause.task)).toBe(true);
            if (cause.kind === "lag") {
              const tight = prep.lags.some((l) => {
                const before = at.get(l.before);
                const after = at.get(l.after);
                if (!before || !after || l.reason !== cause.reason) return false;
                if (
                  !(l.before === placed.task && l.after === cause.task) &&
                  !(l.after === placed.task && l.before === cause.task)
                )
                  return false;
                const gap = after[l.afterEdge] - before[l.beforeEdge];
                return gap === Math.ceil(l.least) || (l.most !== null && gap === Math.floor(l.most));
              });
              expect(tight).toBe(true);
            }
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it("stays whole when the kitchen gets more burners", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const before = planned(prep);
        fc.pre(before.unplaced.length === 0);
        const resources = prep.resources.map((r) =>
          r.id === "burner" ? { ...r, capacity: r.capacity + 3 } : r,
        );
        const more = { ...prep, resources };
        expect(planned(more).unplaced).toEqual([]);
        // The old plan stands in the larger kitchen too.
        expect(checkFromPlan(more, before)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it("is as good as trying every start, on work small enough to try them all", () => {
    fc.assert(
      fc.property(tiny, ({ lengths, gap, most, due }) => {
        const prep = tinyPrep(lengths, gap, most, due);
        const best = everyStart(lengths, gap, most, due);
        const plan = planFromPrep(prep, { tries: 150, seed: 1 }).value;
        if (best === null) expect(plan.unplaced.length).toBeGreaterThan(0);
        else {
          expect(plan.unplaced).toEqual([]);
          expect([plan.objective.lateMinutes, plan.objective.holdMinutes]).toEqual(best);
        }
      }),
      { numRuns: 60 },
    );
  });
});

const opens = 600;
const closes = opens + 40;

/** Two jobs for one cook, each of which must rest and may not wait too long before the plate. */
const tiny = fc.record({
  lengths: fc.tuple(
    fc.integer({ min: 1, max: 8 }),
    fc.integer({ min: 1, max: 8 }),
    fc.integer({ min: 1, max: 4 }),
  ),
  gap: fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })),
  most: fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 })),
  due: fc.integer({ min: 1, max: 30 }),
});
type Pair = readonly [number, number];

const tinyPrep = (lengths: readonly [number, number, number], gap: Pair, most: Pair, due: number): Prep =>
  prepOf(
    [
      task("a", 0, [segment(lengths[0], "hands")]),
      task("b", 0, [segment(lengths[1], "hands")]),
      task("plate", 0, [segment(lengths[2], "hands")], { kind: "plate", finishing: true }),
    ],
    [lag("a", "plate", gap[0], gap[0] + most[0]), lag("b", "plate", gap[1], gap[1] + most[1])],
    [goal(0, opens + due, ["plate"])],
    {
      holds: [
        { task: "a", plate: "plate", weight: 2, hot: true },
        { task: "b", plate: "plate", weight: 1, hot: true },
      ],
      crew: [{ name: "Ada", shifts: [{ from: moment(opens), to: moment(closes) }] }],
    },
  );

/** The least lateness, and the least weighted wait at that lateness, over every start of every task; null when none fits. */
const everyStart = (
  [la, lb, lp]: readonly [number, number, number],
  gap: Pair,
  most: Pair,
  due: number,
): Pair | null => {
  let best: Pair | null = null;
  for (let p = Math.max(0, due - lp); p + lp <= closes - opens; p++) {
    for (let a = 0; a + la <= p; a++) {
      for (let b = 0; b + lb <= p; b++) {
        if (a < b + lb && b < a + la) continue;
        const waits: Pair = [p - a - la, p - b - lb];
        if (waits.some((w, i) => w < gap[i as 0 | 1] || w > gap[i as 0 | 1] + most[i as 0 | 1])) continue;
        const found: Pair = [p + lp - due, 2 * waits[0] + waits[1]];
        if (best === null || found[0] < best[0] || (found[0] === best[0] && found[1] < best[1])) best = found;
      }
    }
  }
  return best;
};

describe("a plan in which some work finds no place", () => {
  const chain = (length: number): Prep =>
    prepOf(
      [
        task("first", 0, [segment(10, "hands")]),
        task("stuck", 0, [segment(length, "hands")]),
        task("third", 0, [segment(10, "hands")]),
        task("plate", 0, [segment(5, "hands")]),
      ],
      [lag("first", "stuck"), lag("stuck", "third"), lag("third", "plate")],
      [goal(0, 1200, ["plate"])],
    );

  it("keeps the order of the rest, and says that the course does not land whole", () => {
    const plan = planned(chain(100_000));
    expect(plan.unplaced).toEqual(["stuck"]);
    const at = new Map(plan.placed.map((p) => [p.task, p]));
    expect(at.get("first")?.end).toBeLessThanOrEqual(at.get("third")?.start ?? 0);
    expect(plan.courses.map((course) => course.whole)).toEqual([false]);
    expect(checkFromPlan(chain(100_000), plan)).toEqual([]);
  });

  it("is whole again when it finds one", () => {
    const plan = planned(chain(10));
    expect([plan.unplaced, plan.courses.map((course) => course.whole)]).toEqual([[], [true]]);
  });
});
