import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { minutes, type Plan, type Prep } from "#engine/index.ts";
import { loadFromPlan } from "#engine/load-from-plan/load-from-plan.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { riskFromPlan } from "#engine/risk-from-plan/risk-from-plan.ts";
import { networkOf } from "#engine/sequence/network.ts";
import { drawLengths, emptyNight, eveningsOf, runNight } from "#engine/sequence/night.ts";
import { goal, lag, prepOf, randomPrep, segment, task } from "../sittings/random-prep.ts";

const planned = (prep: Prep): Plan => planFromPrep(prep, { tries: 0, seed: 3 }).value;
const effort = { runs: 200, seed: 5 };

/** The error function: Abramowitz and Stegun 1964, 7.1.26, |error| ≤ 1.5e-7. */
const erf = (x: number): number => {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const poly =
    ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t;
  return Math.sign(x) * (1 - poly * Math.exp(-x * x));
};
const normalBelow = (z: number): number => (1 + erf(z / Math.SQRT2)) / 2;

/** The same work, where food stands in one of two pans from one task into the next. */
const inPans = (prep: Prep): Prep => ({
  ...prep,
  resources: [...prep.resources, { id: "pan", capacity: 2 }],
  stays: prep.lags
    .filter((l) => l.beforeEdge === "end" && l.afterEdge === "start")
    .slice(0, 5)
    .map((l) => ({ resource: "pan", amount: 1, from: l.before, to: l.after })),
});

describe("how sure a plan is", () => {
  it("is the same for the same seed, and its figures are shares and minutes", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planned(prep);
        const risk = riskFromPlan(prep, plan, effort);
        expect(riskFromPlan(prep, plan, effort)).toEqual(risk);
        expect(risk.courses.length).toBe(plan.courses.filter((course) => course.whole).length);
        for (const course of [...risk.courses, ...risk.spare.courses]) {
          expect(course.withinFive).toBeGreaterThanOrEqual(0);
          expect(course.withinFive).toBeLessThanOrEqual(1);
          expect(course.expectedLate).toBeGreaterThanOrEqual(0);
          expect(course.nineInTen).toBeGreaterThanOrEqual(0);
        }
        // Who takes what next is settled on the night, so that a sooner start now and then meets other work; on the
        // whole it never makes a course less sure. Four standard errors of a share of 200 nights.
        for (const [k, course] of risk.courses.entries())
          expect(risk.spare.courses[k]?.withinFive).toBeGreaterThanOrEqual(course.withinFive - 0.14);
        expect(risk.watch.length).toBeLessThanOrEqual(5);
      }),
      { numRuns: 20 },
    );
  });

  it("never uses a cook, an oven, a burner or a pan twice on any night, and keeps every least lag", () => {
    fc.assert(
      fc.property(randomPrep, fc.nat(50), (bare, run) => {
        const prep = planned(inPans(bare)).unplaced.length === 0 ? inPans(bare) : bare;
        const plan = planned(prep);
        const network = networkOf(prep, plan);
        const { stages, span } = network;
        const n = stages.length;
        const night = emptyNight(n);
        drawLengths(
          network,
          prep.crew.map((c) => c.name),
          1,
          run,
          night.length,
        );
        const soonest = Float64Array.from(stages, ({ place, planned }, k) =>
          place === 0 ? planned - network.ahead[k]! : Number.NEGATIVE_INFINITY,
        );
        runNight(eveningsOf(prep, network), soonest, night);
        const at = (k: number): number => night.start[k]!;
        const end = (k: number): number => night.start[k]! + night.length[k]!;
        const { hands, mind, capacity } = prep.attention;
        for (let k = 0; k < n; k += 1) {
          const there = stages
            .map((s, j) => ({ s, j }))
            .filter(({ j }) => at(j) <= at(k) + 1e-6 && at(k) + 2e-6 < end(j));
          for (const [c] of prep.crew.entries()) {
            const units = there
              .filter(({ j }) => night.cook[j] === c)
              .reduce((sum, { s }) => sum + { hands, mind, none: 0 }[s.segment.attention], 0);
            expect(units).toBeLessThanOrEqual(capacity);
          }
          for (const { id, capacity: most } of prep.resources) {
            const used = there.flatMap(({ s }) => s.segment.uses).filter((u) => u.resource === id);
            expect(used.reduce((sum, u) => sum + u.amount, 0)).toBeLessThanOrEqual(most + 1e-6);
          }
          for (const { id, capacity: most } of prep.resources) {
            const held = (prep.stays ?? []).filter((stay) => {
              const from = stay.from === null ? undefined : span.get(stay.from);
              const to = stay.to === null ? undefined : span.get(stay.to);
              if (stay.resource !== id || (from === undefined && stay.from !== null)) return false;
              return (
                (from === undefined || at(from.first) <= at(k) + 1e-6) &&
                (to === undefined || at(k) + 2e-6 < end(to.last))
              );
            });
            expect(held.reduce((sum, stay) => sum + stay.amount, 0)).toBeLessThanOrEqual(most + 1e-6);
          }
          for (const { id, shelves } of prep.ovens) {
            const inside = there
              .filter(({ s }) => s.oven === id)
              .flatMap(({ s }) => s.segment.uses.filter((u) => u.resource === "oven"));
            expect(inside.reduce((sum, u) => sum + u.amount, 0)).toBeLessThanOrEqual(shelves);
            const settings = inside.map((u) => u.celsius ?? 0);
            if (settings.length > 1)
              expect(Math.max(...settings) - Math.min(...settings)).toBeLessThanOrEqual(
                prep.kitchen.ovenTolerance,
              );
          }
        }
        for (const l of prep.lags) {
          const before = span.get(l.before);
          const after = span.get(l.after);
          if (before === undefined || after === undefined || l.reason === "plate-together") continue;
          const from = l.beforeEdge === "end" ? end(before.last) : at(before.first);
          const to = l.afterEdge === "end" ? end(after.last) : at(after.first);
          expect(to - from).toBeGreaterThanOrEqual(l.least - 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("lands as planned on a night on which everything takes as long as planned", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const network = networkOf(prep, planned(prep));
        const { stages } = network;
        const night = emptyNight(stages.length);
        stages.forEach((stage, k) => {
          night.length[k] = stage.plannedEnd - stage.planned;
        });
        const soonest = Float64Array.from(stages, ({ place, planned: at }) =>
          place === 0 ? at : Number.NEGATIVE_INFINITY,
        );
        runNight(eveningsOf(prep, network), soonest, night);
        for (const [k, stage] of stages.entries()) expect(night.start[k]).toBeCloseTo(stage.planned, 6);
      }),
      { numRuns: 60 },
    );
  });

  it("agrees with the lognormal distribution for one piece of work", () => {
    // Hands-on work of one stated length: coefficients 0.25 and 0.1 (pace) give s² = ln 1.0625 + ln 1.01, mean kept.
    const s2 = Math.log(1.0625) + Math.log(1.01);
    const prep = prepOf(
      [task("plate", 0, [segment(100, "hands")], { kind: "plate", finishing: true })],
      [],
      [goal(0, 1200, ["plate"])],
    );
    const [course] = riskFromPlan(prep, planned(prep), { runs: 20_000, seed: 2 }).courses;
    const expected = normalBelow((Math.log(1.05) + s2 / 2) / Math.sqrt(s2));
    // Four standard errors of a share of 20,000 draws.
    expect(Math.abs((course?.withinFive ?? 0) - expected)).toBeLessThan(4 * Math.sqrt(0.25 / 20_000));
  });

  it("names the work whose length is least known", () => {
    const wide = { low: minutes(30), likely: minutes(60), high: minutes(200) };
    const prep = prepOf(
      [
        task("sure", 0, [segment(30, "none", [], "fridge")]),
        task("unsure", 0, [{ ...segment(60, "hands"), minutes: wide }]),
        task("plate", 0, [segment(5, "hands")], { kind: "plate", finishing: true }),
      ],
      [lag("sure", "unsure"), lag("unsure", "plate")],
      [goal(0, 1200, ["plate"])],
    );
    const { watch } = riskFromPlan(prep, planned(prep), effort);
    expect(watch[0]?.task).toBe("unsure");
    expect(watch[0]?.brings).toBeGreaterThan(watch[1]?.brings ?? 0);
  });
});

describe("the load of a plan", () => {
  it("counts hands-on minutes once, and no hour holds more than the cooks have", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planned(prep);
        const load = loadFromPlan(prep, plan);
        expect(load.handsMinutes).toBe(plan.load.reduce((sum, l) => sum + l.handsMinutes, 0));
        expect(load.busiest?.handsMinutes ?? 0).toBeLessThanOrEqual(60 * prep.crew.length);
        expect(load.busiest?.handsMinutes ?? 0).toBeLessThanOrEqual(load.handsMinutes);
      }),
      { numRuns: 30 },
    );
  });
});
