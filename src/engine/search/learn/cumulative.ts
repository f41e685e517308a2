import { addPropagator, type Core } from "./core.ts";
import { profileOf } from "./cumulative-profile.ts";
import { addEnergyCheck } from "./energy.ts";
import { clashExplained, explain, explained, raise, startReason } from "./trail.ts";
import type { Use } from "./use.ts";

/**
 * At no moment are more than `capacity` units in use, when the atom holds. Time-table filtering over the compulsory
 * parts [latest start, earliest end), each step explained at one moment (Schutt, Feydy, Stuckey, Wallace 2011).
 */
export const addCumulative = (
  core: Core,
  uses: readonly Use[],
  capacity: number,
  whenSide: number,
  whenBound: number,
): void => {
  const n = uses.length;
  const profile = profileOf(core, uses);
  const { starts, lengths, offsets, amounts, presentSides, presentBounds } = profile;
  const chosen = new Int32Array(n);
  let version = 0;
  const lookedVersion = new Int32Array(n).fill(-1);
  const lookedEarly = new Int32Array(n);
  const lookedLate = new Int32Array(n);
  const lookedHere = new Int32Array(n);

  const becausePresent = (j: number): void => {
    if ((presentSides[j] as number) >= 0)
      explain(core, presentSides[j] as number, presentBounds[j] as number);
  };

  /**
   * Explains that at moment t more than `room` units are taken by others than `except`: first those taken since the
   * root, which cost nothing, then what is needed of the rest.
   */
  const because = (t: number, room: number, except: number): void => {
    let count = 0;
    let total = 0;
    for (let free = 1; free >= 0 && total <= room; free--)
      for (let k = 0; k < profile.parts && total <= room; k++) {
        const j = profile.part[k] as number;
        if (j === except || (profile.from[j] as number) > t || (profile.until[j] as number) <= t) continue;
        if (atRoot(j, t) !== (free === 1)) continue;
        chosen[count++] = j;
        total += amounts[j] as number;
      }
    for (let k = count - 1; k >= 0; k--) {
      const j = chosen[k] as number;
      if (total - (amounts[j] as number) > room) {
        total -= amounts[j] as number;
        continue;
      }
      const s = (starts[j] as number) * 2;
      const o = offsets[j] as number;
      explain(core, s, t + 1 - o - (lengths[j] as number));
      explain(core, s + 1, o - t);
      becausePresent(j);
    }
    if (whenSide >= 0) explain(core, whenSide, whenBound);
  };

  const { rootFrom, rootUntil } = profile;
  const atRoot = (j: number, t: number): boolean => {
    return (rootFrom[j] as number) <= t && (rootUntil[j] as number) > t;
  };

  const tooFull = (t: number, active: boolean): boolean => {
    startReason(core);
    if (active) {
      because(t, capacity, -1);
      return clashExplained(core);
    }
    becauseBare(t);
    return raise(core, whenSide ^ 1, 1 - whenBound, explained(core));
  };

  const becauseBare = (t: number): void => {
    let total = 0;
    for (let k = 0; k < profile.parts && total <= capacity; k++) {
      const j = profile.part[k] as number;
      if ((profile.from[j] as number) > t || (profile.until[j] as number) <= t) continue;
      total += amounts[j] as number;
      const s = (starts[j] as number) * 2;
      explain(core, s, t + 1 - (offsets[j] as number) - (lengths[j] as number));
      explain(core, s + 1, (offsets[j] as number) - t);
      becausePresent(j);
    }
  };

  /** Moves the earliest start of a use past stretches too full for it. */
  const push = (i: number): boolean => {
    const { segments, at, height } = profile;
    const length = lengths[i] as number;
    const offset = offsets[i] as number;
    const room = capacity - (amounts[i] as number);
    const s = (starts[i] as number) * 2;
    let early = (core.val[s] as number) + offset;
    for (let k = profile.firstAfter(early); k < segments && (at[k] as number) < early + length; k++) {
      if ((height[k] as number) <= room) continue;
      const from = at[k] as number;
      if (from >= (profile.from[i] as number) && from < (profile.until[i] as number)) continue;
      const until = at[k + 1] as number;
      while (early < until) {
        const t = Math.min(until, early + length) - 1;
        startReason(core);
        explain(core, s, t + 1 - length - offset);
        becausePresent(i);
        because(t, room, i);
        if (!raise(core, s, t + 1 - offset, explained(core))) return false;
        early = t + 1;
      }
    }
    return true;
  };

  /** Moves the latest start of a use before stretches too full for it. */
  const pull = (i: number): boolean => {
    const { at, height } = profile;
    const length = lengths[i] as number;
    const offset = offsets[i] as number;
    const room = capacity - (amounts[i] as number);
    const s = (starts[i] as number) * 2 + 1;
    let late = -(core.val[s] as number) + offset;
    for (let k = profile.firstAfter(late + length) - 1; k >= 0; k--) {
      const until = at[k + 1] as number;
      if (until <= late) break;
      const from = at[k] as number;
      if (from >= late + length || (height[k] as number) <= room) continue;
      if (from >= (profile.from[i] as number) && from < (profile.until[i] as number)) continue;
      while (late > from - length) {
        const t = Math.max(from, late);
        startReason(core);
        explain(core, s, offset - t);
        becausePresent(i);
        because(t, room, i);
        if (!raise(core, s, length + offset - t, explained(core))) return false;
        late = t - length;
      }
    }
    return true;
  };

  /** A use that may be left out has to be, when no start within its bounds has room. */
  const exclude = (i: number): boolean => {
    const { segments, at, height } = profile;
    const length = lengths[i] as number;
    const offset = offsets[i] as number;
    const room = capacity - (amounts[i] as number);
    const s = (starts[i] as number) * 2;
    const late = -(core.val[s + 1] as number) + offset;
    let early = (core.val[s] as number) + offset;
    let last = early;
    startReason(core);
    for (let k = profile.firstAfter(early); k < segments && (at[k] as number) < early + length; k++) {
      if ((height[k] as number) <= room) continue;
      const until = at[k + 1] as number;
      while (early < until && early <= late) {
        const t = Math.min(until, early + length) - 1;
        if (last === early) explain(core, s, t + 1 - length - offset);
        because(t, room, i);
        early = t + 1;
        last = t;
      }
      if (early > late) {
        explain(core, s + 1, offset - last);
        return raise(
          core,
          (presentSides[i] as number) ^ 1,
          1 - (presentBounds[i] as number),
          explained(core),
        );
      }
    }
    return true;
  };

  const run = (): boolean => {
    const active = whenSide < 0 || (core.val[whenSide] as number) >= whenBound;
    if (!active && (core.val[whenSide ^ 1] as number) >= 1 - whenBound) return true;
    if (profile.build()) version++;
    if (core.level === 0) profile.atRoot();
    if (profile.highest > capacity) return tooFull(profile.highestAt, active);
    if (!active || profile.parts === 0) return true;
    for (let i = 0; i < n; i++) {
      if ((amounts[i] as number) + profile.highest <= capacity) continue;
      const here = profile.presence(i);
      const s = (starts[i] as number) * 2;
      // Looked at before, with the same bounds against the same parts: nothing new can follow.
      if (
        lookedVersion[i] === version &&
        lookedEarly[i] === core.val[s] &&
        lookedLate[i] === core.val[s + 1] &&
        lookedHere[i] === here
      )
        continue;
      if (here < 0) continue;
      if (here === 0) {
        if (!exclude(i)) return false;
      } else if ((core.val[s] as number) < -(core.val[s + 1] as number)) {
        if (!push(i) || !pull(i)) return false;
      }
      lookedVersion[i] = version;
      lookedEarly[i] = core.val[s] as number;
      lookedLate[i] = core.val[s + 1] as number;
      lookedHere[i] = here;
    }
    return true;
  };

  const sides = uses.flatMap(({ x, presentSide }) =>
    presentSide < 0 ? [x * 2, x * 2 + 1] : [x * 2, x * 2 + 1, presentSide, presentSide ^ 1],
  );
  addPropagator(core, { run, slow: false }, whenSide < 0 ? sides : [...sides, whenSide]);
  if (whenSide < 0) addEnergyCheck(core, profileOf(core, uses), capacity, sides);
};
