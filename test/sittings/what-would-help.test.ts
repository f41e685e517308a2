import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { runEvening, type Sitting, whyPlan } from "#engine/index.ts";
import { withChange } from "#engine/plan-from-prep/exact/clash-changes.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { readDemo } from "../help/demo.ts";

const { sitting, cards } = readDemo();
const demo = sitting!;
const explained = (change: Partial<Sitting>) => {
  const { prep, plan } = runEvening({ ...demo, ...change }, cards, { tries: 20, seed: 1 }).value;
  return { prep, plan: whyPlan({ prep, plan }) };
};

// Each asks the solver some hundred questions and plans the evening a dozen times.
const patience = { timeout: 180_000 };

describe("an evening that cannot go as written says why, and what would help", patience, () => {
  it("with the crew of the day only: hours the day before, since something stands in the fridge overnight", () => {
    const crew = demo.crew.map((cook) => ({ ...cook, shifts: cook.shifts.filter((s) => s.from >= 0) }));
    const { prep, plan } = explained({ crew });
    expect(plan.clashes?.length).toBeGreaterThan(0);
    for (const { demands, tasks } of plan.clashes ?? []) {
      expect(demands.some((d) => d.kind === "shift" || d.kind === "open")).toBe(true);
      expect(tasks.length).toBeGreaterThan(0);
    }
    const before = plan.waysOut?.find((way) => way.change.kind === "day-before");
    expect(before?.after.unplaced).toBeLessThan(plan.unplaced.length);
    if (!before) return;
    const eased = withChange(prep, before.change);
    const then = planFromPrep(eased, { tries: 40, seed: 1 }).value;
    expect(checkFromPlan(eased, then)).toEqual([]);
    expect(then.unplaced.length).toBeLessThan(plan.unplaced.length);
  });

  it("with one cook: that there is one pair of hands", () => {
    const { plan } = explained({ crew: demo.crew.slice(0, 1) });
    expect(plan.status).not.toBe("on-time");
    // Where the whole reason takes too long to prove, another pair of hands is among what was tried and helps.
    const hands = plan.clashes?.flatMap((clash) => clash.demands).filter((d) => d.kind === "hands") ?? [];
    const help = plan.waysOut?.filter((way) => way.change.kind === "hands") ?? [];
    expect(hands.length + help.length).toBeGreaterThan(0);
    for (const { after } of help) {
      expect(after.unplaced + after.lateMinutes).toBeLessThan(
        plan.unplaced.length + plan.objective.lateMinutes,
      );
    }
  });

  it("as it is: nothing, since every course is on time", () => {
    const { plan } = explained({});
    expect(plan.status).toBe("on-time");
    expect([plan.clashes, plan.waysOut]).toEqual([[], []]);
  });
});
