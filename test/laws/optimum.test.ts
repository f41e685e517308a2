import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { moment, type Prep } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { smallProblem } from "../help/small-problems.ts";
import { optimumByProgramme } from "../help/time-indexed.ts";

const proved = (prep: Prep) => planFromPrep(prep, { tries: 100, proof: 200_000, seed: 3 }).value;

describe("a plan that is proved", () => {
  it("has the optimum that an integer programme finds, level by level, or there is none", async () => {
    let none = 0;
    let found = 0;
    await fc.assert(
      fc.asyncProperty(smallProblem, async (prep) => {
        const best = await optimumByProgramme(prep);
        const plan = proved(prep);
        expect(checkFromPlan(prep, plan)).toEqual([]);
        if (best === null) {
          none += 1;
          expect(plan.unplaced.length).toBeGreaterThan(0);
          return;
        }
        found += 1;
        expect(plan.unplaced).toEqual([]);
        expect(plan.objective.levels.map((l) => l.value)).toEqual(best);
        expect(plan.objective.levels.every((l) => l.proved)).toBe(true);
      }),
      { numRuns: 52, seed: 11 },
    );
    expect(found).toBeGreaterThanOrEqual(30);
    expect(none).toBeGreaterThanOrEqual(1);
  }, 120_000);

  it("is as good when tasks, cooks and ovens stand in another order and under other names", () => {
    fc.assert(
      fc.property(smallProblem, (prep) => {
        const name = (id: string): string => `n ${[...id].reverse().join("")}`;
        const turned: Prep = {
          ...prep,
          tasks: prep.tasks.toReversed().map((t) => ({ ...t, id: name(t.id) })),
          lags: prep.lags.toReversed().map((l) => ({ ...l, before: name(l.before), after: name(l.after) })),
          holds: prep.holds.map((h) => ({ ...h, task: name(h.task), plate: name(h.plate) })),
          courses: prep.courses.map((c) => ({ ...c, plateTasks: c.plateTasks.map(name) })),
          crew: prep.crew.toReversed(),
          ovens: prep.ovens.toReversed(),
          sameCook: (prep.sameCook ?? []).map((group) => group.map(name)),
          freeFrom: (prep.freeFrom ?? []).map((p) => ({ before: name(p.before), after: name(p.after) })),
        };
        const a = proved(prep);
        const b = proved(turned);
        expect(b.unplaced.length > 0).toBe(a.unplaced.length > 0);
        if (a.unplaced.length === 0) expect(b.objective.levels).toEqual(a.objective.levels);
      }),
      { numRuns: 25, seed: 5 },
    );
  }, 60_000);

  it("is possible in mirrored time exactly when it is possible", () => {
    fc.assert(
      fc.property(smallProblem, (given) => {
        // Only what looks the same from both ends: no due times, no cold start, one rate for heating and cooling.
        const end = 36;
        const prep: Prep = {
          ...given,
          courses: [],
          holds: [],
          freeFrom: [],
          calm: [],
          levels: [],
          ramp: { heat: given.kitchen.ovenMinutesPer10C, cool: given.kitchen.ovenMinutesPer10C },
          ovens: given.ovens.map((o) => ({ id: o.id, shelves: o.shelves })),
          ovensCold: "once",
        };
        const room: Prep = { ...prep, span: { from: moment(-100), to: moment(end + 100) } };
        const turn = (at: number) => moment(end - at);
        const mirrored: Prep = {
          ...room,
          tasks: room.tasks.map((t) => ({ ...t, segments: t.segments.toReversed() })),
          lags: room.lags.map((l) => ({ ...l, before: l.after, after: l.before })),
          crew: room.crew.map((c) => ({
            ...c,
            shifts: c.shifts.map((s) => ({ from: turn(s.to), to: turn(s.from) })).toReversed(),
          })),
        };
        expect(proved(mirrored).unplaced.length > 0).toBe(proved(room).unplaced.length > 0);
      }),
      { numRuns: 40, seed: 7 },
    );
  }, 60_000);
});
