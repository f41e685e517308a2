import { describe, expect, it } from "vitest";
import { learningSolver } from "./learning-solver.ts";
import type { LearningSolver } from "./solver.ts";

const freely = { conflicts: null, keepGoing: () => true };

describe("what follows without any search", () => {
  it("follows differences from both ends", () => {
    const solver = learningSolver(1);
    const x = solver.integer(0, 20);
    const y = solver.integer(0, 20);
    solver.difference(x, y, 7, null);
    expect([solver.least(y), solver.greatest(x)]).toEqual([7, 13]);
  });

  it("lets go of a condition whose difference cannot be kept", () => {
    const solver = learningSolver(1);
    const x = solver.integer(5, 9);
    const y = solver.integer(0, 10);
    const when = solver.literal();
    solver.difference(x, y, 6, when);
    expect(solver.solve([], freely)).toBe("yes");
    expect(solver.holds(when)).toBe(false);
    expect(solver.solve([when], freely)).toBe("no");
    expect(solver.core()).toEqual([when]);
  });

  it("moves a start past a stretch that is taken", () => {
    const solver = learningSolver(1);
    const fixed = solver.integer(4, 4);
    const free = solver.integer(2, 20);
    const use = { offset: 0, amount: 2, present: null };
    solver.cumulative(
      [
        { ...use, start: fixed, length: 5 },
        { ...use, start: free, length: 3 },
      ],
      3,
      null,
    );
    solver.solve([], freely);
    expect(solver.least(free)).toBe(9);
  });

  it("leaves out a use for which no start has room", () => {
    const solver = learningSolver(1);
    const fixed = solver.integer(3, 3);
    const free = solver.integer(1, 6);
    const present = solver.literal();
    solver.cumulative(
      [
        { start: fixed, offset: 0, length: 4, amount: 1, present: null },
        { start: free, offset: 0, length: 3, amount: 1, present },
      ],
      1,
      null,
    );
    expect(solver.solve([present], freely)).toBe("no");
    expect(solver.solve([], freely)).toBe("yes");
    expect(solver.holds(present)).toBe(false);
  });

  it("counts the energy of a window: four of length 3, two at a time, do not fit into 5", () => {
    const solver = learningSolver(1);
    const uses = [0, 1, 2, 3].map(() => ({
      start: solver.integer(0, 2),
      offset: 0,
      length: 3,
      amount: 1,
      present: null,
    }));
    solver.cumulative(uses, 2, null);
    expect([solver.solve([], freely), solver.conflicts()]).toEqual(["no", 0]);
  });

  it("bounds a sum", () => {
    const solver = learningSolver(1);
    const x = solver.integer(0, 10);
    const y = solver.integer(3, 10);
    solver.linear(
      [
        { coefficient: 2, x },
        { coefficient: 3, x: y },
      ],
      14,
      null,
    );
    solver.solve([], freely);
    expect([solver.greatest(x), solver.greatest(y)]).toEqual([2, 4]);
  });
});

describe("what cannot be", () => {
  it.each<[string, (solver: LearningSolver) => void]>([
    ["an unknown with nothing between its bounds", (s) => s.integer(5, 3)],
    ["a clause of nothing", (s) => s.clause([])],
    [
      "a use above its capacity",
      (s) => {
        const start = s.integer(0, 9);
        s.cumulative([{ start, offset: 0, length: 2, amount: 3, present: null }], 2, null);
      },
    ],
    [
      "an unknown above itself",
      (s) => {
        const x = s.integer(0, 9);
        s.difference(x, x, 1, null);
      },
    ],
  ])("%s is answered no, with nothing assumed to blame", (_, add) => {
    const solver = learningSolver(1);
    const other = solver.literal();
    add(solver);
    expect([solver.solve([other], freely), solver.core()]).toEqual(["no", []]);
  });
});

describe("asking again", () => {
  it("keeps what it learned, and takes more rules in between", () => {
    const solver = learningSolver(1);
    const x = solver.integer(0, 9);
    const values: number[] = [];
    while (solver.solve([], freely) === "yes" && values.length < 20) {
      values.push(solver.value(x));
      solver.clause([
        solver.atLeast(x, solver.value(x) + 1),
        solver.negate(solver.atLeast(x, solver.value(x))),
      ]);
    }
    expect(values.sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it("looks first where it is told to", () => {
    const solver = learningSolver(1);
    const x = solver.integer(0, 100);
    solver.prefer(x, 37);
    expect([solver.solve([], freely), solver.value(x)]).toEqual(["yes", 37]);
  });

  it("names only the assumptions that clash", () => {
    const solver = learningSolver(1);
    const a = solver.integer(0, 10);
    const b = solver.integer(0, 10);
    const lone = solver.integer(0, 10);
    solver.difference(a, b, 4, null);
    const late = solver.atLeast(a, 5);
    const early = solver.negate(solver.atLeast(b, 9));
    const other = solver.atLeast(lone, 3);
    expect(solver.solve([other, late, early], freely)).toBe("no");
    expect([...solver.core()].sort()).toEqual([late, early].sort());
  });
});
