import type { GoalLevel } from "../../model/prep.ts";
import { chanceFrom } from "../../search/chance.ts";
import { learningSolver } from "../../search/learn/learning-solver.ts";
import type { LearningSolver, Literal, Verdict } from "../../search/learn/solver.ts";
import type { Memory } from "../memory.ts";
import type { Model } from "../model.ts";
import { costOfStarts, placesOf } from "../objective.ts";
import { nowhere } from "../schedule.ts";
import { complete, type Near, standing } from "./complete.ts";
import { type Encoded, encode } from "./encode.ts";
import type { Choice } from "./encode-calendar.ts";
import { encodeLevel } from "./encode-levels.ts";

/** What a proof came to: for each level a bound below which nothing lies, given that the levels before are at their best. */
export type Proof = {
  readonly bounds: readonly number[];
  /** The best schedule found; null when it is the one that was given. */
  readonly found: Memory | null;
  /** True when there is no schedule at all. */
  readonly impossible: boolean;
};

/** Conflicts spent at most, and the caller's clock. */
export type ProofLimit = {
  readonly conflicts: number;
  readonly keepGoing: () => boolean;
  /** Hears of each better schedule. */
  readonly found: (memory: Memory) => void;
};

/** Conflicts after which a long step down is given up for a shorter one. */
const longStep = 400;

/**
 * Brings the levels to their least one after the other, and proves it, by a search that learns. It begins with a
 * schedule that is known (null: none), and keeps to landings no later than that one has in all, where lateness weighs most.
 * Without one it begins near a schedule that is not whole.
 */
export const optimise = (
  model: Model,
  known: Memory | null,
  seed: number,
  limit: ProofLimit,
  near: Near | null = null,
): Proof => {
  const solver = learningSolver(seed);
  const lateFirst = model.levels[0] === "late";
  const late = known === null || !lateFirst ? null : known.slip.reduce((sum, s) => sum + s, 0);
  const encoded = encode(model, solver, {
    tasks: null,
    mostLate: model.goals.map(() => late),
    always: true,
    anchored: true,
  });
  encodeTies(model, solver, encoded);
  const solve = (assumptions: readonly Literal[], most: number | null): Verdict => {
    const left = Math.min(most ?? limit.conflicts, limit.conflicts - solver.conflicts());
    if (left <= 0 || !limit.keepGoing()) return "unknown";
    return solver.solve(assumptions, { conflicts: left, keepGoing: limit.keepGoing });
  };
  const bounds = model.levels.map(() => 0);
  let found: Memory | null = null;
  const verdict =
    known !== null
      ? solve([...standing(solver, encoded, known).values()].flat(), null)
      : near !== null
        ? complete(model, solver, encoded, near, chanceFrom(seed), solve)
        : solve([], null);
  if (known === null) {
    if (verdict !== "yes") return { bounds, found, impossible: verdict === "no" };
    found = memoryOf(model, solver, encoded);
    limit.found(found);
  }
  let best = (found ?? known) as Memory;
  for (const [l, level] of model.levels.entries()) {
    const { terms, constant } = encodeLevel(level, model, solver, encoded);
    let least = valueAt(model, best, level);
    const value = solver.integer(0, Math.max(0, Math.floor(least)));
    solver.linear([...terms, { coefficient: -1, x: value }], -constant, null);
    let bound = 0;
    let step = 1;
    while (bound < least) {
      const target = Math.max(bound, Math.ceil(least) - step);
      const better = solve([solver.negate(solver.atLeast(value, target + 1))], step > 1 ? longStep : null);
      bound = Math.max(bound, solver.least(value));
      if (better === "yes") {
        best = memoryOf(model, solver, encoded);
        found = best;
        limit.found(best);
        least = valueAt(model, best, level);
        step *= 2;
      } else if (better === "no") {
        bound = Math.max(bound, target + 1);
        solver.clause([solver.atLeast(value, Math.min(bound, Math.ceil(least)))]);
        step = Math.max(1, step >> 2);
      } else if (step > 1) step = Math.max(1, step >> 2);
      else {
        bounds[l] = Math.min(bound, least);
        return { bounds, found, impossible: false };
      }
    }
    bounds[l] = least;
    solver.clause([solver.negate(solver.atLeast(value, Math.floor(least) + 1))]);
  }
  return { bounds, found, impossible: false };
};

const valueAt = (model: Model, memory: Memory, level: GoalLevel): number =>
  costOfStarts(model, memory.start, memory.slip)[placesOf(model)(level)] as number;

const memoryOf = (model: Model, solver: LearningSolver, encoded: Encoded): Memory => {
  const pick = (choices: readonly Choice[]): number =>
    choices.find((c) => c.chosen === null || solver.holds(c.chosen))?.index ?? -1;
  const start = Int32Array.from(encoded.starts, (x) => (x === null ? nowhere : solver.value(x)));
  return {
    start,
    cook: Int16Array.from(encoded.cooks, pick),
    oven: Int16Array.from(encoded.ovens, pick),
    slip: Int32Array.from(model.landing, (node, goal) => (start[node] as number) - (model.due[goal] ?? 0)),
  };
};

/** Who knows how to do a task, tasks that one cook does, and ovens that are cold at first: what no group switches off. */
const encodeTies = (model: Model, solver: LearningSolver, encoded: Encoded): void => {
  model.nodes.forEach((node, n) => {
    const start = encoded.starts[n] ?? null;
    if (start === null) return;
    for (const { index, chosen } of encoded.cooks[n] ?? []) {
      if (!node.cooks.includes(index)) solver.clause(chosen === null ? [] : [solver.negate(chosen)]);
    }
    for (const { index, chosen } of encoded.ovens[n] ?? []) {
      const ready = node.ovenReady[index] ?? 0;
      if (ready <= 0) continue;
      const warm = solver.atLeast(start, ready);
      solver.clause(chosen === null ? [warm] : [solver.negate(chosen), warm]);
    }
  });
  for (const group of model.sameCook) {
    const members = group.flatMap((n) => {
      const choices = encoded.cooks[n] ?? [];
      return choices.length > 0 ? [choices] : [];
    });
    for (const [i, choices] of members.entries()) {
      for (const { index, chosen } of choices) {
        const other = members[i + 1]?.find((c) => c.index === index)?.chosen ?? null;
        if (chosen !== null && other !== null) {
          solver.clause([solver.negate(chosen), other]);
          solver.clause([chosen, solver.negate(other)]);
        }
      }
    }
  }
};
