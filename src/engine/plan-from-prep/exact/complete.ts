import type { Chance } from "../../search/chance.ts";
import type { LearningSolver, Literal, Verdict } from "../../search/learn/solver.ts";
import { mostSlip } from "../build.ts";
import type { Memory } from "../memory.ts";
import type { Model } from "../model.ts";
import { nowhere } from "../schedule.ts";
import type { Encoded } from "./encode.ts";

/** Conflicts for one question; after so many in vain half of what is still held is let go. */
const each = 100;

/** A schedule in which some tasks have no place, and how late each course may be near it, minutes (null: as may be). */
export type Near = { readonly schedule: Memory; readonly late: number | null };

/**
 * Looks for a whole schedule near one that is not. What stands is held where it stands, and what the solver names in
 * the way of the rest is let go, until all of it fits: most of it stays, and few conflicts do. Where no lateness is named
 * no course is later than is planned, unless there is nothing else.
 */
export const complete = (
  model: Model,
  solver: LearningSolver,
  encoded: Encoded,
  near: Near,
  chance: Chance,
  solve: (assumptions: readonly Literal[], most: number | null) => Verdict,
): Verdict => {
  lookNear(solver, encoded, near.schedule);
  const held = standing(solver, encoded, near.schedule);
  const late = near.late ?? mostSlip;
  let limits = model.landing.flatMap((node, goal) => {
    const x = encoded.starts[node] ?? null;
    return x === null ? [] : [solver.negate(solver.atLeast(x, (model.due[goal] ?? 0) + late + 1))];
  });
  const nodeOf = new Map(
    [...held].flatMap(([n, literals]) => literals.map((l): [Literal, number] => [l, n])),
  );
  while (held.size > 0) {
    const spent = solver.conflicts();
    const verdict = solve([...limits, ...[...held.values()].flat()], each);
    if (verdict === "yes") return verdict;
    if (verdict === "no") {
      const core = solver.core();
      if (core.length === 0) return verdict;
      const before = held.size;
      for (const literal of core) held.delete(nodeOf.get(literal) ?? -1);
      // A landing held at its latest has the same literal as its limit; what counts is whether something was let go.
      if (held.size < before) continue;
      if (near.late !== null) return "unknown";
      limits = [];
    } else if (solver.conflicts() - spent < each) return verdict;
    else for (const n of [...held.keys()]) if (chance.below(2) === 0) held.delete(n);
  }
  const verdict = solve(limits, null);
  if (verdict !== "no" || limits.length === 0 || solver.core().length === 0) return verdict;
  return near.late === null ? solve([], null) : "unknown";
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
