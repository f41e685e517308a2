import type { Prep } from "../../model/prep.ts";
import type { Model } from "../model.ts";
import { type Asked, oracleFor, type Purse } from "./clash-oracle.ts";
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
 * A smallest clash among some tasks. Demands are made few first, since one solver answers all of those questions and
 * learns from each; then the tasks; then the demands once more, of those tasks. Null when no clash was proved.
 */
export const findClash = (prep: Prep, model: Model, asked: Asked, purse: Purse): Found | null => {
  const full = oracleFor(model, asked, purse);
  if (full.ask(full.groups) !== "clash") return null;
  const rank = new Map(full.groups.map((group) => [keyOf(group), readiness(prep, group)]));
  const ordered = (groups: readonly Group[]): readonly Group[] =>
    groups.toSorted(
      (a, b) => (rank.get(keyOf(a)) ?? 0) - (rank.get(keyOf(b)) ?? 0) || (keyOf(a) < keyOf(b) ? -1 : 1),
    );
  const few = smallestClash(ordered(full.core()), full.ask);
  const tasks = [...(asked.tasks ?? Array.from({ length: model.taskCount }, (_, n) => n))];
  const fewer = smallestClash(
    nearest(model, tasks, few.members),
    (some): Answer => oracleFor(model, { ...asked, tasks: new Set(some) }, purse).ask(few.members),
  );
  const oracle = oracleFor(model, { ...asked, tasks: new Set(fewer.members) }, purse);
  const fewest = smallestClash(few.members, oracle.ask);
  return { tasks: fewer.members, groups: fewest.members, sure: fewer.sure && fewest.sure };
};

/** Tasks with those that the core's lags name first, so that halving drops the others early. */
const nearest = (model: Model, tasks: readonly number[], core: readonly Group[]): readonly number[] => {
  const lags = new Set(core.flatMap((group) => (group.kind === "lag" ? [group.lag] : [])));
  const named = new Set(model.arcs.filter((a) => lags.has(a.lag)).flatMap((a) => [a.from, a.to]));
  return [...tasks].sort((a, b) => Number(named.has(b)) - Number(named.has(a)) || a - b);
};
