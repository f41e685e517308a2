import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learningSolver } from "#engine/search/learn/learning-solver.ts";
import { keeps, post, type Rule, type Small, type SmallLiteral, solutions } from "./learning-small.ts";

const freely = { conflicts: null, keepGoing: () => true };

const literals: fc.Arbitrary<SmallLiteral> = fc.record({
  of: fc.nat(4),
  at: fc.option(fc.integer({ min: 1, max: 5 })),
  holds: fc.boolean(),
});

const rules: fc.Arbitrary<Rule> = fc.oneof(
  fc.record({
    is: fc.constant("clause" as const),
    literals: fc.array(literals, { minLength: 1, maxLength: 4 }),
  }),
  fc.record({
    is: fc.constant("difference" as const),
    x: fc.nat(4),
    y: fc.nat(4),
    weight: fc.integer({ min: -4, max: 4 }),
    when: fc.option(literals),
  }),
  fc.record({
    is: fc.constant("linear" as const),
    coefficients: fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 2, maxLength: 4 }),
    most: fc.integer({ min: -4, max: 12 }),
    when: fc.option(literals),
  }),
  fc.record({
    is: fc.constant("cumulative" as const),
    uses: fc.array(
      fc.record({
        x: fc.nat(4),
        offset: fc.integer({ min: -2, max: 3 }),
        length: fc.nat(4),
        amount: fc.nat(3),
        present: fc.option(literals, { freq: 2 }),
      }),
      { minLength: 2, maxLength: 5 },
    ),
    capacity: fc.integer({ min: 1, max: 4 }),
    when: fc.option(literals),
  }),
);

const problems: fc.Arbitrary<Small> = fc.record({
  greatest: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 3, maxLength: 4 }),
  literals: fc.constant(2),
  rules: fc.array(rules, { minLength: 2, maxLength: 9 }),
});

const first = <T>(of: Iterable<T>): T | null => {
  for (const item of of) return item;
  return null;
};

describe("the learning solver against every value tried", () => {
  it("finds values when there are some, and they keep the rules", () => {
    fc.assert(
      fc.property(problems, fc.nat(5), (small, seed) => {
        const solver = learningSolver(seed);
        const { unknowns, literal } = post(solver, small);
        const exists = first(solutions(small, [])) !== null;
        expect(solver.solve([], freely)).toBe(exists ? "yes" : "no");
        if (!exists) return;
        const xs = unknowns.map(solver.value);
        const bs = [0, 1].map((of) => solver.holds(literal({ of, at: null, holds: true })));
        expect(keeps(small, xs, bs)).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });

  it("answers no with assumptions that clash, also when asked several times", () => {
    fc.assert(
      fc.property(
        problems,
        fc.array(fc.array(literals, { maxLength: 5 }), { minLength: 1, maxLength: 4 }),
        (small, asked) => {
          const solver = learningSolver(1);
          const { literal } = post(solver, small);
          for (const assumed of asked) {
            const verdict = solver.solve(assumed.map(literal), freely);
            const exists = first(solutions(small, assumed)) !== null;
            expect(verdict).toBe(exists ? "yes" : "no");
            if (exists) continue;
            const core = new Set(solver.core());
            const kept = assumed.filter((l) => core.has(literal(l)));
            expect([...core].every((l) => assumed.some((a) => literal(a) === l))).toBe(true);
            expect(first(solutions(small, kept))).toBe(null);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("finds the least value of an unknown by tightening it", () => {
    fc.assert(
      fc.property(problems, (small) => {
        const solver = learningSolver(3);
        const { unknowns } = post(solver, small);
        const goal = unknowns[0]!;
        let best = -1;
        while (solver.solve([], freely) === "yes") {
          best = solver.value(goal);
          solver.clause([solver.negate(solver.atLeast(goal, best))]);
        }
        const values = [...solutions(small, [])].map(({ xs }) => xs[0]!);
        expect(best).toBe(values.length === 0 ? -1 : Math.min(...values));
      }),
      { numRuns: 600 },
    );
  });

  it("gives the same values for the same seed", () => {
    fc.assert(
      fc.property(problems, fc.nat(9), (small, seed) => {
        const run = (): unknown => {
          const solver = learningSolver(seed);
          const { unknowns } = post(solver, small);
          return solver.solve([], freely) === "yes" ? [unknowns.map(solver.value), solver.conflicts()] : "no";
        };
        expect(run()).toEqual(run());
      }),
      { numRuns: 100 },
    );
  });
});

/** Pigeons in one hole fewer: too much to try out, so a limit must end it. */
const pigeons = (count: number) => {
  const solver = learningSolver(1);
  const seat = Array.from({ length: count }, () => Array.from({ length: count - 1 }, () => solver.literal()));
  for (const row of seat) solver.clause(row);
  for (let hole = 0; hole < count - 1; hole++)
    for (let a = 0; a < count; a++)
      for (let b = 0; b < a; b++)
        solver.clause([solver.negate(seat[a]![hole]!), solver.negate(seat[b]![hole]!)]);
  return solver;
};

describe("limits", () => {
  it("stops when told to", () => {
    let asked = 0;
    const verdict = pigeons(14).solve([], { conflicts: null, keepGoing: () => ++asked < 20 });
    expect([verdict, asked]).toEqual(["unknown", 20]);
  });

  it("stops after so many conflicts, and can go on", () => {
    const solver = pigeons(7);
    expect(solver.solve([], { conflicts: 50, keepGoing: () => true })).toBe("unknown");
    expect(solver.conflicts()).toBe(50);
    expect(solver.solve([], freely)).toBe("no");
  });
});
