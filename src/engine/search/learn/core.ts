/**
 * What the learning solver knows at a moment. Every unknown x has two sides: side 2x stands for x, side 2x + 1 for −x.
 * A side only ever has a least value, which rises along the trail and falls back when levels are undone; so all that
 * is known is of one form, the atom (side, bound): "side ≥ bound". The opposite of (s, b) is (s ^ 1, 1 − b).
 */
export type Core = {
  unknowns: number;
  /** Least value of each side now. */
  val: Int32Array;
  /** Place on the trail of the last rise of each side, −1 when it rose at the root only. */
  last: Int32Array;
  /** The value each unknown had when it was last decided: where the search looks first. */
  saved: Int32Array;

  /** The trail: which side rose, to what, from what, the rise of that side before, why, and at which level. */
  length: number;
  side: Int32Array;
  bound: Int32Array;
  before: Int32Array;
  previous: Int32Array;
  why: Int32Array;
  levelOf: Int32Array;
  /** Rises up to here have been handed on. */
  head: number;

  level: number;
  /** Length of the trail, and of the explanations, where each level starts. */
  trailAt: Int32Array;
  reasonsAt: Int32Array;

  /** Explanations written down by propagators: a count, then that many atoms. */
  reasons: Int32Array;
  reasonsLength: number;

  /** Atoms that cannot hold together, after a conflict. */
  clash: Int32Array;
  clashLength: number;

  /** Clauses: size, levels at birth (0: given), conflict of last use, then the atoms. */
  clauses: Int32Array;
  clausesLength: number;
  watches: Watches;

  edges: Edges;
  propagators: Propagator[];
  /** Propagators to wake when a side rises. */
  wakes: number[][];
  waiting: Int32Array;
  waitingLength: number;
  asleep: Uint8Array;

  conflicts: number;
  /** False once the root itself clashes. */
  possible: boolean;
  /** Called for each rise undone, so that who orders the choices can follow. */
  undone: (level: number) => void;
};

/**
 * Watched atoms by the side whose rise makes them false, in order of the value at which that happens: `at[side]` holds
 * those values and `list[side]` the list of each. A list holds clause and an atom that may spare the look, three ints.
 */
export type Watches = {
  at: Int32Array[];
  list: Int32Array[];
  count: Int32Array;
  lists: Int32Array[];
  lengths: Int32Array;
  used: number;
};

/** to ≥ from + weight when the atom (whenSide, whenBound) holds; whenSide −1: always. Edge e ^ 1 is e seen from the other end. */
export type Edges = {
  count: number;
  from: Int32Array;
  to: Int32Array;
  weight: Int32Array;
  whenSide: Int32Array;
  whenBound: Int32Array;
  /** Edges out of each side, packed: to, weight, whenSide, whenBound, edge; and how many ints are in use. */
  out: Int32Array[];
  outLength: Int32Array;
  /** First edge by the side of `when`, and the next one. */
  firstWhen: Int32Array;
  nextWhen: Int32Array;
};

/** Draws conclusions from the bounds; false after a conflict, which it has written down. */
export type Propagator = {
  readonly run: () => boolean;
  /** A slow one waits until the others have nothing more to say. */
  readonly slow: boolean;
};

/** Why an atom came to hold: a choice, or one of three kinds in the two low bits beside a place. */
export const choice = -1;
export const byClause = 0;
export const byReason = 1;
export const byEdge = 2;

/** Ints before the atoms of a clause. */
export const clauseHead = 3;

/** No bound may lie beyond, so that sums of a few of them stay whole 32-bit numbers. */
export const farthest = 500_000_000;

export const emptyCore = (): Core => ({
  unknowns: 0,
  val: new Int32Array(64),
  last: new Int32Array(64),
  saved: new Int32Array(32),
  length: 0,
  side: new Int32Array(256),
  bound: new Int32Array(256),
  before: new Int32Array(256),
  previous: new Int32Array(256),
  why: new Int32Array(256),
  levelOf: new Int32Array(256),
  head: 0,
  level: 0,
  trailAt: new Int32Array(64),
  reasonsAt: new Int32Array(64),
  reasons: new Int32Array(1024),
  reasonsLength: 0,
  clash: new Int32Array(256),
  clashLength: 0,
  clauses: new Int32Array(1024),
  clausesLength: 0,
  watches: { at: [], list: [], count: new Int32Array(64), lists: [], lengths: new Int32Array(64), used: 0 },
  edges: {
    count: 0,
    from: new Int32Array(64),
    to: new Int32Array(64),
    weight: new Int32Array(64),
    whenSide: new Int32Array(64),
    whenBound: new Int32Array(64),
    out: [],
    outLength: new Int32Array(64),
    firstWhen: new Int32Array(64).fill(-1),
    nextWhen: new Int32Array(64),
  },
  propagators: [],
  wakes: [],
  waiting: new Int32Array(16),
  waitingLength: 0,
  asleep: new Uint8Array(16),
  conflicts: 0,
  possible: true,
  undone: () => undefined,
});

/** The array itself, or a longer one that starts with the same values. */
export const grown = (array: Int32Array, least: number, fill = 0): Int32Array<ArrayBuffer> => {
  const longer = new Int32Array(Math.max(least, array.length * 2));
  if (fill !== 0) longer.fill(fill, array.length);
  longer.set(array);
  return longer;
};

/** A new unknown between two values. */
export const addUnknown = (core: Core, least: number, greatest: number): number => {
  const x = core.unknowns++;
  const sides = core.unknowns * 2;
  if (sides > core.val.length) {
    core.val = grown(core.val, sides);
    core.last = grown(core.last, sides);
    core.saved = grown(core.saved, core.unknowns);
    core.watches.count = grown(core.watches.count, sides);
    core.edges.outLength = grown(core.edges.outLength, sides);
    core.edges.firstWhen = grown(core.edges.firstWhen, sides, -1);
  }
  core.val[x * 2] = Math.max(-farthest, least);
  core.val[x * 2 + 1] = -Math.min(farthest, greatest);
  core.last[x * 2] = -1;
  core.last[x * 2 + 1] = -1;
  core.saved[x] = Math.max(-farthest, least);
  core.watches.at.push(new Int32Array(4), new Int32Array(4));
  core.watches.list.push(new Int32Array(4), new Int32Array(4));
  core.edges.out.push(new Int32Array(0), new Int32Array(0));
  core.wakes.push([], []);
  if (least > greatest) core.possible = false;
  return x;
};

/** Adds a propagator that wakes when one of the sides rises; it runs once at the start. */
export const addPropagator = (core: Core, propagator: Propagator, sides: Iterable<number>): void => {
  const id = core.propagators.push(propagator) - 1;
  for (const side of new Set(sides)) core.wakes[side]?.push(id);
  if (id >= core.waiting.length) {
    core.waiting = grown(core.waiting, id + 1);
    const asleep = new Uint8Array(core.waiting.length);
    asleep.set(core.asleep);
    core.asleep = asleep;
  }
  core.waiting[core.waitingLength++] = id;
  core.asleep[id] = 1;
};
