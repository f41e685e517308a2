import type { Core } from "./core.ts";
import { sortBy } from "./sort-by.ts";
import type { Use } from "./use.ts";

/** The compulsory parts of the uses of one resource, and what they add up to over time. */
export type CumulativeProfile = {
  readonly starts: Int32Array;
  readonly offsets: Int32Array;
  readonly lengths: Int32Array;
  readonly amounts: Int32Array;
  readonly presentSides: Int32Array;
  readonly presentBounds: Int32Array;
  /** Uses with a compulsory part, and where it lies: [from, until); empty for the others. */
  parts: number;
  readonly part: Int32Array;
  readonly from: Int32Array;
  readonly until: Int32Array;
  /** The compulsory parts that the root alone knows of. */
  readonly rootFrom: Int32Array;
  readonly rootUntil: Int32Array;
  /** Stretches of even height: stretch k goes from at[k] to at[k + 1]. */
  segments: number;
  readonly at: Int32Array;
  readonly height: Int32Array;
  /** Units taken before each stretch, summed over time; one more for after the last. */
  readonly before: Float64Array;
  highest: number;
  highestAt: number;
  /** Brings all of this up to date; false when nothing of it has changed. */
  readonly build: () => boolean;
  readonly atRoot: () => void;
  /** The first stretch that ends after t. */
  readonly firstAfter: (t: number) => number;
  /** 1 present, 0 open, −1 left out. */
  readonly presence: (i: number) => number;
};

export const profileOf = (core: Core, uses: readonly Use[]): CumulativeProfile => {
  const n = uses.length;
  const byFrom = new Int32Array(n);
  const byUntil = new Int32Array(n);
  const seen = new Int32Array(n);
  let ordered = 0;
  let stamp = 0;
  const starts = Int32Array.from(uses, (use) => use.x);
  const offsets = Int32Array.from(uses, (use) => use.offset);
  const lengths = Int32Array.from(uses, (use) => use.length);
  const amounts = Int32Array.from(uses, (use) => use.amount);
  const presentSides = Int32Array.from(uses, (use) => use.presentSide);
  const presentBounds = Int32Array.from(uses, (use) => use.presentBound);
  const from = new Int32Array(n).fill(farAway);
  const until = new Int32Array(n).fill(farAway);
  const at = new Int32Array(2 * n + 2);
  const height = new Int32Array(2 * n + 2);
  const before = new Float64Array(2 * n + 2);

  const presence = (i: number): number => {
    const side = presentSides[i] as number;
    if (side < 0) return 1;
    const bound = presentBounds[i] as number;
    if ((core.val[side] as number) >= bound) return 1;
    return (core.val[side ^ 1] as number) >= 1 - bound ? -1 : 0;
  };

  /** Takes over who is still a part in the old order, adds who is new, and puts all in order by their keys. */
  const reorder = (order: Int32Array, key: Int32Array): void => {
    stamp++;
    let count = 0;
    for (let k = 0; k < ordered; k++) {
      const i = order[k] as number;
      if (from[i] === farAway) continue;
      order[count++] = i;
      seen[i] = stamp;
    }
    for (let k = 0; k < profile.parts; k++) {
      const i = profile.part[k] as number;
      if (seen[i] !== stamp) order[count++] = i;
    }
    sortBy(order, key, count);
  };

  const build = (): boolean => {
    const { val } = core;
    let parts = 0;
    let changed = false;
    for (let i = 0; i < n; i++) {
      const s = (starts[i] as number) * 2;
      let a = -(val[s + 1] as number) + (offsets[i] as number);
      let b = (val[s] as number) + (offsets[i] as number) + (lengths[i] as number);
      if (a < b && presence(i) === 1) profile.part[parts++] = i;
      else {
        a = farAway;
        b = farAway;
      }
      if (from[i] !== a || until[i] !== b) {
        from[i] = a;
        until[i] = b;
        changed = true;
      }
    }
    profile.parts = parts;
    if (!changed) return false;
    reorder(byFrom, from);
    reorder(byUntil, until);
    ordered = parts;
    sum();
    return true;
  };

  const sum = (): void => {
    const { parts } = profile;
    let segments = 0;
    let now = 0;
    let highest = 0;
    let highestAt = 0;
    let e = 0;
    for (let k = 0; k < parts || e < parts; ) {
      const opens = k < parts ? (from[byFrom[k] as number] as number) : farAway;
      const closes = until[byUntil[e] as number] as number;
      const t = Math.min(opens, closes);
      while (e < parts && until[byUntil[e] as number] === t) now -= amounts[byUntil[e++] as number] as number;
      while (k < parts && from[byFrom[k] as number] === t) now += amounts[byFrom[k++] as number] as number;
      const gone = segments === 0 ? 0 : (t - (at[segments - 1] as number)) * (height[segments - 1] as number);
      before[segments] = segments === 0 ? 0 : (before[segments - 1] as number) + gone;
      at[segments] = t;
      height[segments++] = now;
      if (now > highest) {
        highest = now;
        highestAt = t;
      }
    }
    // The last stretch only closes the one before it.
    profile.segments = Math.max(0, segments - 1);
    profile.highest = highest;
    profile.highestAt = highestAt;
  };

  const profile: CumulativeProfile = {
    starts,
    offsets,
    lengths,
    amounts,
    presentSides,
    presentBounds,
    parts: 0,
    part: new Int32Array(n),
    from,
    until,
    rootFrom: new Int32Array(n).fill(farAway),
    rootUntil: new Int32Array(n).fill(farAway),
    segments: 0,
    at,
    height,
    before,
    highest: 0,
    highestAt: 0,
    build,
    atRoot: () => {
      profile.rootFrom.set(from);
      profile.rootUntil.set(until);
    },
    firstAfter: (t) => {
      let low = 0;
      let high = profile.segments;
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((at[middle + 1] as number) > t) high = middle;
        else low = middle + 1;
      }
      return low;
    },
    presence,
  };
  return profile;
};

const farAway = 1_000_000_000;
