import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learningSolver } from "#engine/search/learn/learning-solver.ts";
import type { Literal } from "#engine/search/learn/solver.ts";

type Job = {
  readonly length: number;
  readonly amount: number;
  readonly first: number;
  readonly slack: number;
};

const jobs: fc.Arbitrary<readonly Job[]> = fc.array(
  fc.record({
    length: fc.integer({ min: 1, max: 4 }),
    amount: fc.integer({ min: 1, max: 3 }),
    first: fc.nat(4),
    slack: fc.nat(4),
  }),
  { minLength: 4, maxLength: 5 },
);

const horizon = 8;

/** True when the jobs can be placed one by one into their windows; a plain search with no part of the solver. */
const fits = (
  list: readonly Job[],
  windows: readonly (readonly [number, number])[],
  capacity: number,
): boolean => {
  const taken = Array.from({ length: horizon + 5 }, () => 0);
  const place = (i: number): boolean => {
    const job = list[i];
    if (job === undefined) return true;
    const [from, to] = windows[i]!;
    for (let start = from; start <= to; start++) {
      const minutes = Array.from({ length: job.length }, (_, k) => start + k);
      if (minutes.some((t) => taken[t]! + job.amount > capacity)) continue;
      for (const t of minutes) taken[t]! += job.amount;
      const rest = place(i + 1);
      for (const t of minutes) taken[t]! -= job.amount;
      if (rest) return true;
    }
    return false;
  };
  return place(0);
};

describe("one resource, windows given as assumptions", () => {
  it("agrees with placing one by one, and blames only windows that clash by themselves", () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 3, max: 5 }), fc.nat(3), (list, capacity, seed) => {
        const solver = learningSolver(seed);
        const starts = list.map(() => solver.integer(0, horizon));
        solver.cumulative(
          list.map(({ length, amount }, i) => ({
            start: starts[i]!,
            offset: 0,
            length,
            amount,
            present: null,
          })),
          capacity,
          null,
        );
        const lows = list.map((job, i) => solver.atLeast(starts[i]!, job.first));
        const highs = list.map((job, i) =>
          solver.negate(solver.atLeast(starts[i]!, job.first + job.slack + 1)),
        );
        const windowsOf = (on: (l: Literal) => boolean): (readonly [number, number])[] =>
          list.map((job, i) => [
            on(lows[i]!) ? job.first : 0,
            on(highs[i]!) ? job.first + job.slack : horizon,
          ]);
        const verdict = solver.solve([...lows, ...highs], { conflicts: null, keepGoing: () => true });
        const possible = fits(
          list,
          windowsOf(() => true),
          capacity,
        );
        expect(verdict).toBe(possible ? "yes" : "no");
        if (possible) {
          const exact = starts.map((x): readonly [number, number] => [solver.value(x), solver.value(x)]);
          expect(fits(list, exact, capacity)).toBe(true);
        } else {
          const core = new Set(solver.core());
          expect(
            fits(
              list,
              windowsOf((l) => core.has(l)),
              capacity,
            ),
          ).toBe(false);
        }
        // What was learned under the assumptions may not shut out what is possible without them.
        expect(solver.solve([], { conflicts: null, keepGoing: () => true })).toBe(
          fits(
            list,
            windowsOf(() => false),
            capacity,
          )
            ? "yes"
            : "no",
        );
      }),
      { numRuns: 1000 },
    );
  });
});
