import { addPropagator, type Core } from "./core.ts";
import type { CumulativeProfile } from "./cumulative-profile.ts";
import { sortBy } from "./sort-by.ts";
import { clashExplained, explain, startReason } from "./trail.ts";

/** After so many runs in vain the check waits longer between two runs; a hit brings it back. */
const longestPause = 32;

/**
 * Fails when the uses that must lie within a window, and the compulsory parts that reach into it, ask for more than
 * the resource gives there: the energy check of time-table edge-finding (Vilím 2011; Schutt, Feydy, Stuckey 2013).
 * For a resource that always holds, and counting only uses that are present.
 */
export const addEnergyCheck = (
  core: Core,
  profile: CumulativeProfile,
  capacity: number,
  sides: Iterable<number>,
): void => {
  const { starts, offsets, lengths, amounts, from, until, presentSides, presentBounds } = profile;
  const n = starts.length;
  const early = new Int32Array(n);
  const late = new Int32Array(n);
  const spare = new Float64Array(n);
  const atEarly = new Float64Array(n);
  const rootEarly = new Int32Array(n).fill(-1_000_000_000);
  const rootLate = new Int32Array(n).fill(1_000_000_000);
  const byEarly = Int32Array.from(starts, (_, i) => i);
  const byLate = Int32Array.from(starts, (_, i) => i);
  const within = new Int32Array(n);
  let pause = 1;
  let passed = 0;

  /** Units taken by compulsory parts, summed over time up to t. */
  const takenUntil = (t: number): number => {
    const { segments, at, height, before } = profile;
    if (segments === 0) return 0;
    const k = profile.firstAfter(t);
    if (k >= segments) return before[segments] as number;
    const into = t - (at[k] as number);
    return (before[k] as number) + (into > 0 ? into * (height[k] as number) : 0);
  };

  const clash = (a: number, b: number, total: number): false => {
    let excess = total - capacity * (b - a) - 1;
    startReason(core);
    // Asked for less, first of what only reaches in, then of what lies within; what the root knows costs nothing.
    for (const inside of [false, true])
      for (let i = 0; i < n; i++) {
        if (profile.presence(i) !== 1) continue;
        const length = lengths[i] as number;
        const isInside = (early[i] as number) >= a && (late[i] as number) <= b;
        if (isInside !== inside) continue;
        const part = isInside ? length : Math.min(b, until[i] as number) - Math.max(a, from[i] as number);
        within[i] = Math.max(0, part);
        if (part <= 0) continue;
        const known =
          (rootEarly[i] as number) + length >= a + part && (rootLate[i] as number) - length <= b - part;
        if (known && (presentSides[i] as number) < 0) continue;
        const less = Math.min(part, Math.floor(excess / (amounts[i] as number)));
        excess -= less * (amounts[i] as number);
        const left = part - less;
        if (left === 0) continue;
        const s = (starts[i] as number) * 2;
        const o = offsets[i] as number;
        explain(core, s, a + left - length - o);
        explain(core, s + 1, o - (b - left));
        if ((presentSides[i] as number) >= 0)
          explain(core, presentSides[i] as number, presentBounds[i] as number);
      }
    return clashExplained(core);
  };

  const run = (): boolean => {
    if (core.level > 0 && ++passed < pause) return true;
    passed = 0;
    profile.build();
    for (let i = 0; i < n; i++) {
      const s = (starts[i] as number) * 2;
      const o = offsets[i] as number;
      const length = lengths[i] as number;
      early[i] = (core.val[s] as number) + o;
      late[i] = -(core.val[s + 1] as number) + o + length;
      if (core.level === 0) {
        rootEarly[i] = early[i] as number;
        rootLate[i] = late[i] as number;
      }
      const part = (until[i] as number) - (from[i] as number);
      spare[i] = profile.presence(i) === 1 ? (amounts[i] as number) * (length - part) : 0;
      atEarly[i] = takenUntil(early[i] as number);
    }
    sortBy(byEarly, early, n);
    sortBy(byLate, late, n);
    let previous = -1_000_000_000;
    for (let k = n - 1; k >= 0; k--) {
      const last = byLate[k] as number;
      const b = late[last] as number;
      if (b === previous || spare[last] === 0) continue;
      previous = b;
      const atB = takenUntil(b);
      let inside = 0;
      for (let m = n - 1; m >= 0; m--) {
        const i = byEarly[m] as number;
        const a = early[i] as number;
        if (a >= b || (late[i] as number) > b) continue;
        inside += spare[i] as number;
        const total = inside + atB - (atEarly[i] as number);
        if (total > capacity * (b - a)) {
          pause = 1;
          return clash(a, b, total);
        }
      }
    }
    pause = Math.min(longestPause, pause + 1);
    return true;
  };

  addPropagator(core, { run, slow: true }, sides);
};
