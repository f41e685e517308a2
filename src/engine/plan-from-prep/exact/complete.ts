import type { Chance } from "../../search/chance.ts";
import type { LearningSolver, Literal, Verdict } from "../../search/learn/solver.ts";
import { mostSlip } from "../build.ts";
import type { Memory } from "../memory.ts";
import type { Model } from "../model.ts";
import { nowhere } from "../schedule.ts";
import type { Encoded } from "./encode.ts";

/** Conflicts for one question; after so many in vain half of what is still held is let go. */
const each = 100;

/**
 * Looks for a whole schedule near one in which some tasks have no place. What stands is held where it stands, and what
 * the solver names in the way of the rest is let go, until all of it fits: most of it stays, and few conflicts do.
 * No course is later than is planned; only where that alone cannot be is it let go too.
 */
export const complete = (
  model: Model,
  solver: LearningSolver,
  encoded: Encoded,
  near: Memory,
  chance: Chance,
  solve: (assumptions: readonly Literal[], most: number | null) => Verdict,
): Verdict => {
  lookNear(solver, encoded, near);
  const held = standing(solver, encoded, near);
  const onTime = new Set(
    model.landing.flatMap((node, goal) => {
      const x = encoded.starts[node] ?? null;
      return x === null ? [] : [solver.negate(solver.atLeast(x, (model.due[goal] ?? 0) + mostSlip + 1))];
    }),
  );
  const nodeOf = new Map(
    [...held].flatMap(([n, literals]) => literals.map((l): [Literal, number] => [l, n])),
  );
  while (held.size > 0) {
    const spent = solver.conflicts();
    const verdict = solve([...onTime, ...[...held.values()].flat()], each);
    if (verdict === "yes") return verdict;
    if (verdict === "no") {
      const core = solver.core();
      if (core.length === 0) return verdict;
      const named = new Set(core.flatMap((literal) => nodeOf.get(literal) ?? []));
      for (const n of named) held.delete(n);
      if (named.size === 0) onTime.clear();
    } else if (solver.conflicts() - spent < each) return verdict;
    else for (const n of [...held.keys()]) if (chance.below(2) === 0) held.delete(n);
  }
  const verdict = onTime.size === 0 ? "no" : solve([...onTime], null);
  return verdict === "no" ? solve([], null) : verdict;
};

/** The literals that put each task where it stands, by cook and oven too. */
export const standing = (
  solver: LearningSolver,
  encoded: Encoded,
  memory: Memory,
): Map<number, readonly Literal[]> =>
  new Map(
    encoded.starts.flatMap((x, n): [number, readonly Literal[]][] => {
      const at = memory.start[n] as number;
      if (x === null || at === nowhere) return [];
      const chosen = [
        ...(encoded.cooks[n] ?? []).filter((c) => c.index === memory.cook[n]),
        ...(encoded.ovens[n] ?? []).filter((o) => o.index === memory.oven[n]),
      ].flatMap((c) => c.chosen ?? []);
      return [[n, [solver.atLeast(x, at), solver.negate(solver.atLeast(x, at + 1)), ...chosen]]];
    }),
  );

/** Has the solver look first where tasks stand. */
const lookNear = (solver: LearningSolver, encoded: Encoded, near: Memory): void => {
  encoded.starts.forEach((x, n) => {
    const at = near.start[n] as number;
    if (x === null || at === nowhere) return;
    solver.prefer(x, at);
    for (const { index, chosen } of encoded.cooks[n] ?? [])
      if (chosen !== null) solver.preferLiteral(chosen, index === near.cook[n]);
    for (const { index, chosen } of encoded.ovens[n] ?? [])
      if (chosen !== null) solver.preferLiteral(chosen, index === near.oven[n]);
  });
};
