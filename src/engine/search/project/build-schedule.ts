import type { Arcs, Layout } from "./layout.ts";
import { profileFor } from "./profile.ts";

/** Builds schedules of one project; all arrays are kept and used again. */
export type Builder = {
  /** Serial schedule generation in the order of a list: fills `starts`, and gives the makespan. */
  readonly forward: (list: Int32Array, starts: Int32Array) => number;
  /** The same from the end: the list goes from the last activity to the first, and starts count back from the end. */
  readonly backward: (list: Int32Array, starts: Int32Array) => number;
  /**
   * Fills the list with the activities as they end, the last one first: the order that justifies a schedule to the
   * other side. `mirrored` says that the starts count back from the end.
   */
  readonly byFallingEnd: (starts: Int32Array, list: Int32Array, mirrored: boolean) => void;
  /** How many schedules were built so far. */
  readonly built: () => number;
};

/**
 * Serial schedule generation (Kelley 1963; Kolisch 1996) and the orders that justification takes from a schedule
 * (Valls, Ballestín, Quintanilla 2005). A list must name no activity before one that it waits for.
 */
export const builderFor = (layout: Layout): Builder => {
  const { count, lengths, horizon } = layout;
  const profile = profileFor(layout);
  const tally = new Int32Array(horizon * 2 + 3);
  let built = 0;

  const serial =
    ({ first, from, weight }: Arcs) =>
    (list: Int32Array, starts: Int32Array): number => {
      built++;
      profile.clear();
      let makespan = 0;
      for (let i = 0; i < count; i++) {
        const activity = list[i] as number;
        const end = first[activity + 1] as number;
        let earliest = 0;
        for (let k = first[activity] as number; k < end; k++) {
          const after = (starts[from[k] as number] as number) + (weight[k] as number);
          if (after > earliest) earliest = after;
        }
        const start = profile.place(activity, earliest);
        starts[activity] = start;
        const done = start + (lengths[activity] as number);
        if (done > makespan) makespan = done;
      }
      return makespan;
    };

  return {
    forward: serial(layout.forward),
    backward: serial(layout.backward),
    byFallingEnd: (starts, list, mirrored) => {
      let most = 0;
      for (let a = 0; a < count; a++) {
        const end = (starts[a] as number) + (lengths[a] as number);
        if (end > most) most = end;
        tally[end] = (tally[end] as number) + 1;
      }
      let place = count;
      for (let t = 0; t <= most; t++) {
        const here = tally[t] as number;
        tally[t] = place;
        place -= here;
      }
      // Places are handed out from the back. Of equal ends, what the lags put last goes first, seen from either side.
      for (let i = 0; i < count; i++) {
        const a = mirrored ? count - 1 - i : i;
        const end = (starts[a] as number) + (lengths[a] as number);
        const at = (tally[end] as number) - 1;
        tally[end] = at;
        list[at] = a;
      }
      tally.fill(0, 0, most + 1);
    },
    built: () => built,
  };
};
