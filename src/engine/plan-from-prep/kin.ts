import type { Paths } from "./longest-paths.ts";
import type { Arc, Model, Starts } from "./model.ts";
import { washingsOf } from "./stays.ts";

/** Arcs at each node: those of `n` are at first[n] to first[n + 1] - 1. */
type Ends = {
  readonly first: Int32Array;
  readonly other: Int32Array;
  readonly weight: Int32Array;
  /** 1 for an arc that says how long something may wait, 0 for one that says what comes first. */
  readonly most: Uint8Array;
};

/** What hangs together by lags, laid out for speed. */
export type Kin = {
  readonly out: Ends;
  readonly into: Ends;
  /** The set of nodes that lags bind together, by node, and the nodes of each set. */
  readonly setOf: Int32Array;
  readonly sets: readonly (readonly number[])[];
  /** Tasks that come after a node, and are placed before it; washing-up is placed after what it waits for. */
  readonly followers: readonly (readonly number[])[];
  /** 1 for washing-up that frees a vessel. */
  readonly isWashing: Uint8Array;
  /** Starts that some cook could take: from, to, from, to, rising. */
  readonly open: readonly Int32Array[];
};

export const kinOf = (model: Model, paths: Paths): Kin => {
  const washings = washingsOf(model);
  const setOf = new Int32Array(model.nodes.length).fill(-1);
  const sets: (readonly number[])[] = [];
  for (let n = 0; n < model.nodes.length; n++) {
    if ((setOf[n] as number) >= 0) continue;
    const set = paths.kin(n);
    for (const k of set) setOf[k] = sets.length;
    sets.push(set);
  }
  return {
    out: endsOf(model.out, (arc) => arc.to),
    into: endsOf(model.into, (arc) => arc.from),
    setOf,
    sets,
    followers: followersOf(model, washings),
    isWashing: Uint8Array.from(model.nodes, (_, n) => (washings.has(n) ? 1 : 0)),
    open: model.nodes.map((node) => flat(node.anyStarts)),
  };
};

const followersOf = (model: Model, washings: ReadonlySet<number>): readonly (readonly number[])[] =>
  model.out.map((arcs, n) =>
    washings.has(n)
      ? (model.into[n] ?? []).flatMap((arc) => (arc.most || arc.from >= model.taskCount ? [] : [arc.from]))
      : arcs.flatMap((arc) =>
          !arc.most && arc.weight > 0 && arc.to < model.taskCount && !washings.has(arc.to) ? [arc.to] : [],
        ),
  );

const flat = (starts: Starts): Int32Array => Int32Array.from(starts.flatMap((s) => [s.from, s.to]));

const endsOf = (arcs: readonly (readonly Arc[])[], otherOf: (arc: Arc) => number): Ends => {
  const all = arcs.flat();
  const first = new Int32Array(arcs.length + 1);
  arcs.forEach((list, n) => {
    first[n + 1] = (first[n] as number) + list.length;
  });
  return {
    first,
    other: Int32Array.from(all, otherOf),
    weight: Int32Array.from(all, (arc) => arc.weight),
    most: Uint8Array.from(all, (arc) => (arc.most ? 1 : 0)),
  };
};
