import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import type { Plan, Prep } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { randomPrep } from "../sittings/random-prep.ts";

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
});
