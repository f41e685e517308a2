import { byClause, type Core, choice, clauseHead, grown } from "./core.ts";
import { raise } from "./trail.ts";
import { addWatch, clearWatches, firstAbove } from "./watches.ts";

/**
 * Adds a clause given at the root: atoms of which one must hold. Atoms of one side are joined to the weakest; what is
 * settled at the root is left out.
 */
export const addClause = (core: Core, atoms: readonly number[]): void => {
  const weakest = new Map<number, number>();
  for (let k = 0; k < atoms.length; k += 2) {
    const side = atoms[k] as number;
    const bound = atoms[k + 1] as number;
    if ((core.val[side] as number) >= bound) return;
    if (-(core.val[side ^ 1] as number) < bound) continue;
    weakest.set(side, Math.min(bound, weakest.get(side) ?? bound));
  }
  for (const [side, bound] of weakest) {
    const other = weakest.get(side ^ 1);
    if (other !== undefined && bound + other <= 1) return;
  }
  const flat = [...weakest].flat();
  if (flat.length === 0) core.possible = false;
  else if (flat.length === 2) {
    if (!raise(core, flat[0] as number, flat[1] as number, choice)) core.possible = false;
  } else storeClause(core, flat, flat.length, 0);
};

/** Stores a clause of at least two atoms and watches the first two; `levels` is 0 for a given one. */
export const storeClause = (core: Core, atoms: ArrayLike<number>, ints: number, levels: number): number => {
  const at = core.clausesLength;
  const end = at + clauseHead + ints;
  if (end > core.clauses.length) core.clauses = grown(core.clauses, end);
  core.clauses[at] = ints >> 1;
  core.clauses[at + 1] = levels;
  core.clauses[at + 2] = core.conflicts;
  for (let k = 0; k < ints; k++) core.clauses[at + clauseHead + k] = atoms[k] as number;
  core.clausesLength = end;
  watchBoth(core, at);
  return at;
};

const watchBoth = (core: Core, at: number): void => {
  const c = core.clauses;
  const s0 = c[at + 3] as number;
  const b0 = c[at + 4] as number;
  const s1 = c[at + 5] as number;
  const b1 = c[at + 6] as number;
  addWatch(core.watches, s0, b0, at, s1, b1);
  addWatch(core.watches, s1, b1, at, s0, b0);
};

/** What follows by clauses when a side has risen from `old` to `now`; false at a conflict. */
export const propagateClauses = (core: Core, side: number, old: number, now: number): boolean => {
  const { watches } = core;
  const count = watches.count[side] as number;
  if (count === 0) return true;
  const at = watches.at[side] as Int32Array;
  const list = watches.list[side] as Int32Array;
  for (let k = firstAbove(at, count, old); k < count && (at[k] as number) <= now; k++)
    if (!look(core, side, list[k] as number)) return false;
  return true;
};

/** Goes through the clauses that watch an atom which has become false. */
const look = (core: Core, side: number, id: number): boolean => {
  const { val, clauses, watches } = core;
  const list = watches.lists[id] as Int32Array;
  const length = watches.lengths[id] as number;
  let keep = 0;
  for (let i = 0; i < length; i += 3) {
    const at = list[i] as number;
    let spareSide = list[i + 1] as number;
    let spareBound = list[i + 2] as number;
    let fails = false;
    if ((val[spareSide] as number) < spareBound) {
      const first = at + clauseHead;
      if ((clauses[first] as number) === (side ^ 1)) {
        clauses[first] = clauses[first + 2] as number;
        const swapped = clauses[first + 1] as number;
        clauses[first + 1] = clauses[first + 3] as number;
        clauses[first + 2] = side ^ 1;
        clauses[first + 3] = swapped;
      }
      spareSide = clauses[first] as number;
      spareBound = clauses[first + 1] as number;
      if ((val[spareSide] as number) < spareBound) {
        const end = first + (clauses[at] as number) * 2;
        let k = first + 4;
        while (k < end && -(val[(clauses[k] as number) ^ 1] as number) < (clauses[k + 1] as number)) k += 2;
        if (k < end) {
          const s = clauses[k] as number;
          const b = clauses[k + 1] as number;
          clauses[k] = clauses[first + 2] as number;
          clauses[k + 1] = clauses[first + 3] as number;
          clauses[first + 2] = s;
          clauses[first + 3] = b;
          addWatch(watches, s, b, at, spareSide, spareBound);
          continue;
        }
        fails = !raise(core, spareSide, spareBound, (at << 2) | byClause);
      }
    }
    list[keep] = at;
    list[keep + 1] = spareSide;
    list[keep + 2] = spareBound;
    keep += 3;
    if (fails) {
      list.copyWithin(keep, i + 3, length);
      watches.lengths[id] = keep + length - i - 3;
      return false;
    }
  }
  watches.lengths[id] = keep;
  return true;
};

/**
 * Keeps the given clauses and the better part of the learned ones (few levels at birth, or used lately), and drops
 * what the root has settled. Only at the root, where no clause is the reason of anything still to be explained.
 */
export const tidyClauses = (core: Core, mostLearned: number): void => {
  const old = core.clauses;
  const end = core.clausesLength;
  const learned: number[] = [];
  for (let at = 0; at < end; at += clauseHead + (old[at] as number) * 2)
    if ((old[at + 1] as number) > 2) learned.push(at);
  const worth = (at: number): number =>
    (old[at + 2] as number) - core.conflicts - 100 * (old[at + 1] as number);
  const dropped = new Set(
    learned.length <= mostLearned
      ? []
      : learned.sort((a, b) => worth(b) - worth(a) || a - b).slice(mostLearned),
  );
  clearWatches(core.watches);
  core.clausesLength = 0;
  const atoms: number[] = [];
  for (let at = 0; at < end; ) {
    const size = old[at] as number;
    const next = at + clauseHead + size * 2;
    if (!dropped.has(at)) {
      const levels = old[at + 1] as number;
      const used = old[at + 2] as number;
      atoms.length = 0;
      let settled = false;
      for (let k = at + clauseHead; k < next; k += 2) {
        const s = old[k] as number;
        const b = old[k + 1] as number;
        if ((core.val[s] as number) >= b) settled = true;
        if (-(core.val[s ^ 1] as number) >= b) atoms.push(s, b);
      }
      // The written part never runs ahead of the read one, for a clause only ever becomes shorter.
      if (!settled && atoms.length >= 4) {
        const stored = storeClause(core, atoms, atoms.length, levels);
        core.clauses[stored + 2] = used;
      }
    }
    at = next;
  }
};
