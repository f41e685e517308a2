import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Project } from "#engine/index.ts";
import { solveProject } from "#engine/index.ts";

const effort = (seed = 1) => ({ seed, steps: 8000, keepGoing: () => true, tell: () => undefined });

/** Small plain projects: activities between a source and a sink, each waiting for some of those before it. */
const project: fc.Arbitrary<Project> = fc
  .record({
    lengths: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 5 }),
    capacities: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 2 }),
    seed: fc.integer({ min: 0, max: 2 ** 20 }),
  })
  .map(({ lengths: own, capacities, seed }): Project => {
    const lengths = [0, ...own, 0];
    const last = lengths.length - 1;
    const bit = (k: number): number => (seed >> (k % 20)) & 1;
    const lags = own.flatMap((length, i) => [
      { from: 0, to: i + 1, weight: 0 },
      { from: i + 1, to: last, weight: length },
      ...own.flatMap((_, j) =>
        j > i && bit(i * 5 + j) === 1 ? [{ from: i + 1, to: j + 1, weight: length }] : [],
      ),
    ]);
    const demands = lengths.map((_, i) =>
      capacities.map((most, r) => (i === 0 || i === last ? 0 : Math.min(most, 1 + ((seed >> (i + r)) & 3)))),
    );
    return { lengths, demands, capacities, lags };
  });

/** Checks a schedule by the words of the problem alone. */
const isValid = ({ lengths, demands, capacities, lags }: Project, starts: readonly number[]): boolean =>
  starts.every((s) => s >= 0) &&
  lags.every(({ from, to, weight }) => starts[to]! >= starts[from]! + weight) &&
  capacities.every((most, r) =>
    starts.every((at) => {
      const used = starts.reduce(
        (sum, s, i) => sum + (s <= at && at < s + lengths[i]! ? demands[i]![r]! : 0),
        0,
      );
      return used <= most;
    }),
  );

/** The shortest makespan by trying every start of every activity. */
const bruteForce = (p: Project): number => {
  const horizon = p.lengths.reduce((a, b) => a + b, 0);
  const inner = p.lengths.length - 2;
  const starts = p.lengths.map(() => 0);
  let best = Number.POSITIVE_INFINITY;
  const go = (i: number): void => {
    if (i > inner) {
      const end = Math.max(0, ...starts.slice(1, -1).map((s, k) => s + p.lengths[k + 1]!));
      starts[inner + 1] = end;
      if (end < best && isValid(p, starts)) best = end;
      return;
    }
    for (let s = 0; s + p.lengths[i]! <= horizon; s += 1) {
      starts[i] = s;
      const fine = p.lags.every((l) => l.to !== i || l.from >= i || s >= starts[l.from]! + l.weight);
      if (fine) go(i + 1);
    }
  };
  go(1);
  return best;
};

describe("a project's schedule", () => {
  it("keeps every lag and resource, and is as short as any", () => {
    fc.assert(
      fc.property(project, (p) => {
        const answer = solveProject(p, effort());
        expect(answer.starts).not.toBeNull();
        expect(isValid(p, answer.starts!)).toBe(true);
        expect(answer.status).toBe("proved");
        expect(answer.bound).toBe(answer.makespan);
        expect(answer.makespan).toBe(bruteForce(p));
      }),
      { numRuns: 60 },
    );
  });

  it("is as long when all is seen from the end, and for any seed", () => {
    fc.assert(
      fc.property(project, fc.integer({ min: 1, max: 99 }), (p, seed) => {
        const last = p.lengths.length - 1;
        const turned: Project = {
          lengths: p.lengths.toReversed(),
          demands: p.demands.toReversed(),
          capacities: p.capacities,
          lags: p.lags.map(({ from, to, weight }) => ({
            from: last - to,
            to: last - from,
            weight: weight - p.lengths[from]! + p.lengths[to]!,
          })),
        };
        expect(solveProject(turned, effort(seed)).makespan).toBe(solveProject(p, effort()).makespan);
      }),
      { numRuns: 40 },
    );
  });

  it("is the same for the same seed and steps", () => {
    fc.assert(
      fc.property(project, (p) => {
        expect(solveProject(p, effort(7))).toEqual(solveProject(p, effort(7)));
      }),
      { numRuns: 20 },
    );
  });
});
