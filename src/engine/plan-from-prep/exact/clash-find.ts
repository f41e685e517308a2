import type { Prep } from "../../model/prep.ts";
import type { Model } from "../model.ts";
import { type Asked, type Oracle, oracleForAll, type Purse } from "./clash-oracle.ts";
import { isSafety } from "./clash-safety.ts";
import { type Answer, smallestClash } from "./clash-smallest.ts";
import { type Group, keyOf } from "./encode-groups.ts";

/** Tasks and demands of the model that cannot go together; leave any one out and they can. */
export type Found = {
  readonly tasks: readonly number[];
  readonly groups: readonly Group[];
  /** False when some test was given up, so that the set may not be smallest. */
  readonly sure: boolean;
};

/**
 * How readily a cook changes a demand: the first are waits, then hours and hands, then equipment, then the card's own
 * rests, and what food safety asks comes last.
 */
const readiness = (prep: Prep, group: Group): number => {
  switch (group.kind) {
    case "lag": {
      const lag = prep.lags[group.lag];
      if (lag && isSafety(prep, lag, group.most ? "most" : "least")) return 5;
      return group.most ? 0 : 4;
    }
    case "due":
      return 1;
    case "shift":
    case "hands":
    case "open":
      return 2;
    default:
      return 3;
  }
};

/**
 * A smallest clash among some tasks, whichever way they are done in. Demands are made few first, since one solver answers all of those questions and
 * learns from each; then the tasks; then the demands once more, of those tasks. Null when no clash was proved.
 */
export const findClash = (prep: Prep, models: readonly Model[], asked: Asked, purse: Purse): Found | null => {
  const [model] = models;
  if (model === undefined) return null;
  const full = oracleForAll(models, asked, purse);
  if (full.ask(full.groups) !== "clash") return null;
  const rank = new Map(full.groups.map((group) => [keyOf(group), readiness(prep, group)]));
  const ordered = (groups: readonly Group[]): readonly Group[] =>
    groups.toSorted(
      (a, b) => (rank.get(keyOf(a)) ?? 0) - (rank.get(keyOf(b)) ?? 0) || (keyOf(a) < keyOf(b) ? -1 : 1),
    );
  const core = ordered(full.core());
  const all = [...(asked.tasks ?? Array.from({ length: model.taskCount }, (_, n) => n))];
  const oracleOf = (some: readonly number[]): Oracle =>
    oracleForAll(models, { ...asked, tasks: new Set(some) }, purse);
  // Most often the tasks that the lags of the core name are enough, and questions about few tasks cost little.
  const named = namedBy(model, all, core);
  const small = named.length > 0 && named.length < all.length ? oracleOf(named) : null;
  const enough = small !== null && small.ask(core) === "clash";
  const few = smallestClash(core, enough ? small.ask : full.ask);
  const left = enough ? named : all;
  const near = namedBy(model, left, few.members);
  const nearIsEnough = near.length < left.length && oracleOf(near).ask(few.members) === "clash";
  const fewer = smallestClash(
    nearIsEnough ? near : [...near, ...left.filter((n) => !near.includes(n))],
    (some): Answer => oracleOf(some).ask(few.members),
  );
  const oracle = oracleForAll(models, { ...asked, tasks: new Set(fewer.members) }, purse);
  const fewest = smallestClash(few.members, oracle.ask);
  return { tasks: fewer.members, groups: fewest.members, sure: fewer.sure && fewest.sure };
};

/** Those of some tasks that the lags of a core name. */
const namedBy = (model: Model, tasks: readonly number[], core: readonly Group[]): readonly number[] => {
  const lags = new Set(core.flatMap((group) => (group.kind === "lag" ? [group.lag] : [])));
  const named = new Set(model.arcs.filter((a) => lags.has(a.lag)).flatMap((a) => [a.from, a.to]));
  return tasks.filter((n) => named.has(n));
};
