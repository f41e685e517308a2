import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Project, ProjectEffort } from "#engine/search/project/project.ts";
import { solveWithLags } from "#engine/search/project/with-lags.ts";

const freely: ProjectEffort = { seed: 1, steps: null, keepGoing: () => true, tell: () => undefined };

/** What is wrong with a schedule, read from the project's own words and with no part of the engine. */
const faults = (project: Project, starts: readonly number[]): string[] => {
  const out: string[] = [];
  for (const { from, to, weight } of project.lags)
    if (starts[to]! < starts[from]! + weight) out.push(`lag ${from} to ${to}`);
  starts.forEach((start, i) => {
    if (start < 0) out.push(`${i} before the start`);
    if (start + project.lengths[i]! > starts.at(-1)!) out.push(`${i} after the end`);
  });
  for (let t = 0; t < starts.at(-1)!; t++)
    project.capacities.forEach((capacity, r) => {
      const running = starts.flatMap((start, i) =>
        start <= t && t < start + project.lengths[i]! ? [i] : [],
      );
      const taken = running.reduce((sum, i) => sum + project.demands[i]![r]!, 0);
      if (taken > capacity) out.push(`resource ${r} at ${t}`);
    });
  return out;
};

/** The least makespan by trying every start up to a horizon; null when none keeps the rules. */
const bruteForce = (project: Project, horizon: number): number | null => {
  const inner = project.lengths.length - 2;
  let best: number | null = null;
  for (let code = 0; code < (horizon + 1) ** inner; code++) {
    let rest = code;
    const starts = [0];
    for (let i = 0; i < inner; i++) {
      starts.push(rest % (horizon + 1));
      rest = Math.floor(rest / (horizon + 1));
    }
    const end = Math.max(
      0,
      ...starts.map((start, i) => start + project.lengths[i]!),
      ...project.lags.flatMap((l) => (l.to === inner + 1 ? [starts[l.from]! + l.weight] : [])),
    );
    if (best !== null && end >= best) continue;
    if (faults(project, [...starts, end]).length === 0) best = end;
  }
  return best;
};

const small: fc.Arbitrary<Project> = fc
  .record({
    lengths: fc.array(fc.nat(3), { minLength: 2, maxLength: 4 }),
    capacities: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 2 }),
    amounts: fc.array(fc.nat(3), { minLength: 8, maxLength: 8 }),
    lags: fc.array(fc.record({ from: fc.nat(3), to: fc.nat(3), weight: fc.integer({ min: -4, max: 4 }) }), {
      maxLength: 6,
    }),
  })
  .map(({ lengths, capacities, amounts, lags }) => {
    const inner = lengths.length;
    return {
      lengths: [0, ...lengths, 0],
      capacities,
      demands: [
        capacities.map(() => 0),
        ...lengths.map((_, i) => capacities.map((most, r) => Math.min(most, amounts[i * 2 + r]!))),
        capacities.map(() => 0),
      ],
      lags: lags.map(({ from, to, weight }) => ({ from: 1 + (from % inner), to: 1 + (to % inner), weight })),
    };
  });

describe("projects with greatest lags", () => {
  it("has the makespan that trying everything gives, and a schedule that keeps the rules", () => {
    fc.assert(
      fc.property(small, (project) => {
        const answer = solveWithLags(project, freely);
        // Twice the longest sum of three lengths or lags is more than any of these needs.
        const least = bruteForce(project, project.lengths.length === 6 ? 11 : 14);
        expect(answer.status).toBe(least === null ? "none" : "proved");
        expect(answer.makespan).toBe(least);
        if (answer.starts !== null) expect(faults(project, answer.starts)).toEqual([]);
        if (least !== null) expect(answer.bound).toBe(least);
      }),
      { numRuns: 120 },
    );
  });

  it("shows that lags that go round with too much time have no schedule", () => {
    const project: Project = {
      lengths: [0, 2, 3, 0],
      demands: [[0], [0], [0], [0]],
      capacities: [1],
      // The second at least 4 after the first, and at most 3 after it.
      lags: [
        { from: 1, to: 2, weight: 4 },
        { from: 2, to: 1, weight: -3 },
      ],
    };
    expect(solveWithLags(project, freely).status).toBe("none");
  });

  it("shows that one machine cannot do two at once because a greatest lag is too short", () => {
    const project = (most: number): Project => ({
      lengths: [0, 5, 4, 0],
      demands: [[0], [1], [1], [0]],
      capacities: [1],
      // Neither starts more than `most` after the other: they take 5 and 4 on one machine.
      lags: [
        { from: 1, to: 2, weight: -most },
        { from: 2, to: 1, weight: -most },
      ],
    });
    expect([3, 4, 5].map((most) => solveWithLags(project(most), freely).makespan)).toEqual([null, 9, 9]);
  });

  it("gives the same answer for the same seed and the same steps", () => {
    fc.assert(
      fc.property(small, fc.nat(20), (project, steps) => {
        const run = () => solveWithLags(project, { ...freely, steps });
        expect(run()).toEqual(run());
      }),
      { numRuns: 50 },
    );
  });

  it("stops at once when told to, and claims nothing then", () => {
    const lengths = [0, ...Array.from({ length: 40 }, (_, i) => 3 + ((i * 7) % 11)), 0];
    const project: Project = {
      lengths,
      demands: lengths.map((length, i) => (length === 0 ? [0, 0] : [1 + (i % 4), 1 + ((i * 3) % 5)])),
      capacities: [6, 7],
      lags: [],
    };
    let asked = 0;
    const answer = solveWithLags(project, { ...freely, keepGoing: () => ++asked < 4 });
    expect(asked).toBeLessThanOrEqual(5);
    expect(["unknown", "found"]).toContain(answer.status);
    expect(answer.bound).toBeLessThanOrEqual(answer.makespan ?? Number.POSITIVE_INFINITY);
  });
});
