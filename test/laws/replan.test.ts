import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { moment, type Plan, type Prep, type Progress, replan, runEvening } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { readDemo } from "../help/demo.ts";
import { randomPrep } from "../sittings/random-prep.ts";

const planned = (prep: Prep): Plan => ({
  ...planFromPrep(prep, { tries: 3, seed: 3 }).value,
  violations: [],
});

/** The plan as it stands at a moment: what should be done is, what should run does, `late` minutes longer. */
const progressAt = (plan: Plan, now: number, late = 0): Progress => ({
  now: moment(now),
  done: plan.placed.filter((p) => p.end <= now).map(({ task, start, end }) => ({ task, start, end })),
  running: plan.placed
    .filter((p) => p.start < now && p.end > now)
    .map(({ task, start, end }) => ({ task, start, ends: moment(end + late) })),
});

const middles = (plan: Plan): readonly number[] => {
  const starts = plan.placed.map((p) => p.start).sort((a, b) => a - b);
  return [0.25, 0.5, 0.75].map((share) => starts[Math.floor(share * starts.length)] ?? 0);
};

describe("planning the rest of a night", () => {
  it("changes nothing when everything is as planned", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planned(prep);
        for (const now of middles(plan)) {
          const { value } = replan({ prep, plan }, progressAt(plan, now), { tries: 0, seed: 1 });
          if (plan.unplaced.length === 0) expect(value.changes).toEqual([]);
        }
      }),
      { numRuns: 12 },
    );
  });

  it("keeps every limit, and moves nothing that has begun, however late things run", () => {
    fc.assert(
      fc.property(randomPrep, fc.integer({ min: 0, max: 90 }), (prep, late) => {
        const plan = planned(prep);
        for (const now of middles(plan)) {
          const progress = progressAt(plan, now, late);
          const { value } = replan({ prep, plan }, progress, { tries: 0, seed: 1 });
          expect(checkFromPlan(value.prep, value.plan)).toEqual([]);
          const done = new Set(progress.done.map((d) => d.task));
          for (const placed of value.plan.placed) {
            expect(done.has(placed.task)).toBe(false);
            expect(placed.start).toBeGreaterThanOrEqual(Math.ceil(now));
          }
          const begun = new Set(progress.running.map((r) => r.task));
          for (const run of value.plan.placed.filter((p) => begun.has(p.task))) {
            const before = plan.placed.find((p) => p.task === run.task);
            expect([run.cook, run.oven]).toEqual([before?.cook, before?.oven]);
          }
        }
      }),
      { numRuns: 12 },
    );
  });

  it("of the demo: twenty minutes late in the afternoon is told, and every course still lands whole", () => {
    const read = readDemo();
    if (read.sitting === null) throw new Error("the demo cannot be read");
    const { prep, plan } = runEvening(read.sitting, read.cards).value;
    const now = 16 * 60 + 40;
    const { value } = replan({ prep, plan }, progressAt(plan, now, 20), { tries: 50, seed: 1 });
    expect(value.plan.violations).toEqual([]);
    expect(value.plan.unplaced).toEqual([]);
    expect(value.plan.courses.every((course) => course.whole)).toBe(true);
    expect(value.changes.length).toBeGreaterThan(0);
    for (const change of value.changes) expect(change.after?.start ?? now).toBeGreaterThanOrEqual(now);
  });
});
