import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { count, moment, runEvening, type Sitting } from "#engine/index.ts";
import { readDemo } from "../help/demo.ts";

const { sitting, cards } = readDemo();
const demo = sitting!;
const tried = (change: Partial<Sitting>) => {
  const { value, findings } = runEvening({ ...demo, ...change }, cards, { tries: 20, seed: 1 });
  return { ...value, findings, codes: findings.map((f) => f.code) };
};

/** Evenings that cannot go as written: there is a partial plan, what is in it holds, and what is missing is said. */
describe("an evening", () => {
  it("with nobody to cook has no plan, and says so for each course", () => {
    const { plan, prep, findings } = tried({ crew: [] });
    expect(checkFromPlan(prep, plan)).toEqual([]);
    expect(plan.status).toBe("partial");
    expect(findings.filter((f) => f.code === "nobody-on-shift").map((f) => f.path)).toEqual(
      demo.courses.map((_, c) => `courses/${c}`),
    );
  });

  it("whose cooks leave at eight has nobody for the courses after it", () => {
    const crew = demo.crew.map((cook) => ({
      ...cook,
      shifts: cook.shifts.map((s) => ({ from: s.from, to: moment(Math.min(s.to, 20 * 60)) })),
    }));
    const { plan, prep, findings } = tried({ crew });
    expect(checkFromPlan(prep, plan)).toEqual([]);
    const unmanned = findings.flatMap((f) => (f.code === "nobody-on-shift" ? [f.facts.course] : []));
    expect(unmanned).toEqual(demo.courses.filter((c) => c.at > 20 * 60).map((c) => c.name));
    // The courses before it still stand.
    const before = plan.courses.filter((c) => c.due <= 20 * 60);
    expect(before.length).toBeGreaterThan(0);
    expect(before.map((c) => c.lateMinutes)).toEqual(before.map(() => 0));
  });

  it("without an oven names what needs one, and plans the rest", () => {
    const { plan, prep, findings } = tried({ kitchen: { ...demo.kitchen, ovens: [] } });
    expect(checkFromPlan(prep, plan)).toEqual([]);
    const named = findings.flatMap((f) => (f.code === "station-missing" ? [f.source] : []));
    expect(new Set(named).size).toBeGreaterThan(3);
    expect(
      prep.tasks.flatMap((t) => t.segments.flatMap((s) => s.uses)).filter((u) => u.resource === "oven"),
    ).toEqual([]);
  });

  it("with the crew of the day only gives up the nights in the fridge, by name, and plans the rest", () => {
    const crew = demo.crew.map((cook) => ({ ...cook, shifts: cook.shifts.filter((s) => s.from >= 0) }));
    const { plan, prep, codes } = tried({ crew });
    expect(checkFromPlan(prep, plan)).toEqual([]);
    // Many alike are told once.
    const told = codes.filter((code) => /^tasks?-unplaced$/.test(code));
    expect(told.length).toBeGreaterThan(0);
    expect(told.length).toBeLessThanOrEqual(3);
    expect(plan.placed.length).toBeGreaterThan(prep.tasks.length / 2);
    for (const id of plan.unplaced) expect(plan.placed.some((p) => p.task === id)).toBe(false);
  });

  it("for a hundred and twenty in the same hall ends in a partial plan that holds", () => {
    const { plan, prep } = tried({ covers: count(120) });
    expect(checkFromPlan(prep, plan)).toEqual([]);
    expect(plan.status).not.toBe("on-time");
  });
});
