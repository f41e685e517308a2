import type { Chance } from "../chance.ts";

/** How far activities may move in one try: from `least` to `most`, one of each an activity. */
export type Nearby = { readonly least: readonly number[]; readonly most: readonly number[] };

/**
 * A neighbourhood of a schedule: the activities that run in a stretch of time move freely, all others only a little
 * forward (large neighbourhood search after Palpant, Artigues, Michelon 2004, with bounds in place of fixed starts).
 * `share` of the makespan is the length of the stretch.
 */
export const nearby = (
  starts: readonly number[],
  lengths: readonly number[],
  share: number,
  chance: Chance,
): Nearby => {
  const makespan = starts.at(-1) ?? 0;
  const width = Math.max(2, Math.round(makespan * share));
  const from = chance.below(Math.max(1, makespan + width)) - width;
  // Tight and loose tries take turns: what follows the stretch must move up for the whole to become shorter.
  const drift = Math.max(1, Math.round((makespan * (1 + chance.below(8))) / 100));
  const free = (i: number): boolean =>
    (starts[i] as number) < from + width && (starts[i] as number) + (lengths[i] ?? 0) > from;
  return {
    least: starts.map((s, i) => (free(i) ? 0 : Math.max(0, s - drift))),
    most: starts.map((s, i) => (free(i) ? makespan : s)),
  };
};
