import { byClause, byEdge, byReason, type Core, clauseHead, grown } from "./core.ts";

/**
 * Raises a side to a bound for a reason. False when the other side forbids it; then `clash` holds the reason's atoms
 * and the one that stands against it.
 */
export const raise = (core: Core, side: number, bound: number, why: number): boolean => {
  const old = core.val[side] as number;
  if (bound <= old) return true;
  if (bound > -(core.val[side ^ 1] as number)) {
    core.clashLength = 0;
    core.clash = withReason(core, side, bound, why, core.clash, 0);
    core.clashLength = core.clash[0] as number;
    // withReason leaves the count in front; the clash keeps atoms only.
    core.clash.copyWithin(0, 1, 1 + core.clashLength);
    if (core.clashLength + 2 > core.clash.length) core.clash = grown(core.clash, core.clashLength + 2);
    core.clash[core.clashLength++] = side ^ 1;
    core.clash[core.clashLength++] = 1 - bound;
    return false;
  }
  const n = core.length;
  if (n === core.side.length) growTrail(core);
  core.side[n] = side;
  core.bound[n] = bound;
  core.before[n] = old;
  core.previous[n] = core.last[side] as number;
  core.why[n] = why;
  core.levelOf[n] = core.level;
  core.last[side] = n;
  core.val[side] = bound;
  core.length = n + 1;
  return true;
};

const growTrail = (core: Core): void => {
  const more = core.length * 2;
  core.side = grown(core.side, more);
  core.bound = grown(core.bound, more);
  core.before = grown(core.before, more);
  core.previous = grown(core.previous, more);
  core.why = grown(core.why, more);
  core.levelOf = grown(core.levelOf, more);
};

/** Where on the trail an atom that holds first came to hold; −1 for the root. */
export const placeOf = (core: Core, side: number, bound: number): number => {
  const { before, previous } = core;
  let place = core.last[side] as number;
  while (place >= 0 && (before[place] as number) >= bound) place = previous[place] as number;
  return place;
};

/**
 * Writes the atoms that made (side, bound) hold into `into` from `offset`: first twice their number, then the atoms.
 * Gives the array, which may have been replaced by a longer one.
 */
export const withReason = (
  core: Core,
  side: number,
  bound: number,
  why: number,
  into: Int32Array,
  offset: number,
): Int32Array => {
  let out = into;
  let n = offset + 1;
  const place = why >> 2;
  const kind = why & 3;
  if (kind === byEdge) {
    const { from, weight, whenSide, whenBound } = core.edges;
    if (n + 4 > out.length) out = grown(out, n + 4);
    out[n++] = from[place] as number;
    out[n++] = bound - (weight[place] as number);
    if ((whenSide[place] as number) >= 0) {
      out[n++] = whenSide[place] as number;
      out[n++] = whenBound[place] as number;
    }
  } else if (kind === byClause) {
    const { clauses } = core;
    const size = clauses[place] as number;
    if (n + size * 2 > out.length) out = grown(out, n + size * 2);
    const end = place + clauseHead + size * 2;
    for (let k = place + clauseHead; k < end; k += 2) {
      const s = clauses[k] as number;
      if (s === side) continue;
      out[n++] = s ^ 1;
      out[n++] = 1 - (clauses[k + 1] as number);
    }
  } else if (kind === byReason) {
    const { reasons } = core;
    const size = reasons[place] as number;
    if (n + size * 2 > out.length) out = grown(out, n + size * 2);
    for (let k = 0; k < size * 2; k++) out[n++] = reasons[place + 1 + k] as number;
  }
  out[offset] = n - offset - 1;
  return out;
};

/** Starts a level with a choice. */
export const chooseAtom = (core: Core, side: number, bound: number, why: number): boolean => {
  core.level++;
  if (core.level + 1 >= core.trailAt.length) {
    core.trailAt = grown(core.trailAt, core.level + 2);
    core.reasonsAt = grown(core.reasonsAt, core.level + 2);
  }
  core.trailAt[core.level] = core.length;
  core.reasonsAt[core.level] = core.reasonsLength;
  return raise(core, side, bound, why);
};

/** Undoes all levels above one. */
export const undoTo = (core: Core, level: number): void => {
  if (core.level <= level) return;
  const { side, before, previous, val, last, saved } = core;
  const from = core.trailAt[level + 1] as number;
  for (let i = core.length - 1; i >= from; i--) {
    const s = side[i] as number;
    const x = s >> 1;
    // What was decided is looked at first next time; what was open keeps its old preference within its bounds.
    const low = val[x * 2] as number;
    const high = -(val[x * 2 + 1] as number);
    const old = saved[x] as number;
    if (old < low) saved[x] = low;
    else if (old > high) saved[x] = high;
    val[s] = before[i] as number;
    last[s] = previous[i] as number;
  }
  core.length = from;
  core.head = from;
  core.reasonsLength = core.reasonsAt[level + 1] as number;
  core.level = level;
  core.undone(level);
};

/** Starts an explanation; atoms follow by `explain`, and `explained` closes it. */
export const startReason = (core: Core): void => {
  if (core.reasonsLength + 1 > core.reasons.length)
    core.reasons = grown(core.reasons, core.reasonsLength + 1);
  core.reasons[core.reasonsLength] = 0;
};

/** Adds an atom to the explanation begun last. */
export const explain = (core: Core, side: number, bound: number): void => {
  const at = core.reasonsLength;
  const size = core.reasons[at] as number;
  const k = at + 1 + size * 2;
  if (k + 2 > core.reasons.length) core.reasons = grown(core.reasons, k + 2);
  core.reasons[k] = side;
  core.reasons[k + 1] = bound;
  core.reasons[at] = size + 1;
};

/** Closes the explanation begun last, and gives it in the form `raise` takes. */
export const explained = (core: Core): number => {
  const at = core.reasonsLength;
  core.reasonsLength = at + 1 + (core.reasons[at] as number) * 2;
  return (at << 2) | byReason;
};

/** The explanation begun last is itself the conflict. */
export const clashExplained = (core: Core): false => {
  const at = core.reasonsLength;
  const size = (core.reasons[at] as number) * 2;
  if (size > core.clash.length) core.clash = grown(core.clash, size);
  for (let k = 0; k < size; k++) core.clash[k] = core.reasons[at + 1 + k] as number;
  core.clashLength = size;
  return false;
};
