import fc from "fast-check";
import { expect, it } from "vitest";
import { compile } from "#engine/plan-from-prep/compile.ts";
import { optimise } from "#engine/plan-from-prep/exact/optimise.ts";
import { costOfStarts } from "#engine/plan-from-prep/objective.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { nowhere } from "#engine/plan-from-prep/schedule.ts";
import { smallProblem } from "../help/small-problems.ts";

const limit = { conflicts: 200_000, keepGoing: () => true, found: () => {} };

it("a schedule that is not whole leads to the same best as none, or to none where there is none", () => {
  let whole = 0;
  let none = 0;
  fc.assert(
    fc.property(smallProblem, fc.array(fc.integer({ min: -1, max: 30 })), fc.nat(4), (prep, starts, late) => {
      const model = compile(prep);
      if (model.nodes.some((node, n) => n < model.taskCount && node.anyStarts.length === 0)) return;
      // Whatever stood wherever: what it is near never decides what there is.
      const schedule = {
        start: Int32Array.from(model.nodes, (_, n) => starts[n] ?? nowhere),
        cook: Int16Array.from(model.nodes, (node) => node.cooks[0] ?? -1),
        oven: Int16Array.from(model.nodes, (node) => node.ovens[0] ?? -1),
        slip: new Int32Array(model.goals.length),
      };
      const proof = optimise(model, null, 3, limit, { schedule, late: null });
      const plan = planFromPrep(prep, { tries: 100, proof: 200_000, seed: 3 }).value;
      expect(proof.impossible).toBe(plan.unplaced.length > 0);
      expect(proof.found === null).toBe(proof.impossible);
      if (proof.found === null) {
        none += 1;
        return;
      }
      whole += 1;
      // With a limit there is one exactly when the best has every course within it, or another has.
      const { landing, due } = model;
      const within = optimise(model, null, 3, limit, { schedule, late });
      expect(within.impossible).toBe(false);
      const slips = landing.map((n, g) => (within.found?.start[n] ?? 0) - (due[g] ?? 0));
      if (within.found !== null) expect(Math.max(0, ...slips)).toBeLessThanOrEqual(late);
      else expect(Math.max(0, ...plan.courses.map((c) => c.lateMinutes))).toBeGreaterThan(late);
      const cost = costOfStarts(model, proof.found.start, proof.found.slip);
      expect([...cost].slice(1, 1 + model.levels.length)).toEqual(
        plan.objective.levels.map(({ value }) => value as number),
      );
    }),
    { numRuns: 120, seed: 7 },
  );
  expect(whole).toBeGreaterThan(30);
  expect(none).toBeGreaterThan(3);
}, 60_000);
