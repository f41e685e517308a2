import { noPath } from "./longest-paths.ts";
import type { Starts } from "./model.ts";
import type { Schedule } from "./schedule.ts";

/** Starts that lags to the nodes already placed leave open: [from, to]; empty when from > to. */
export const windowOf = (
  schedule: Schedule,
  node: number,
): { readonly from: number; readonly to: number } => {
  const { paths, model, spots } = schedule;
  let from = 0;
  let to = model.horizon - (model.nodes[node]?.length ?? 0);
  for (const other of paths.kin(node)) {
    const spot = spots[other];
    if (!spot || other === node) continue;
    const after = paths.least(other, node);
    if (after > noPath / 2 && spot.start + after > from) from = spot.start + after;
    const before = paths.least(node, other);
    if (before > noPath / 2 && spot.start - before < to) to = spot.start - before;
  }
  return { from, to };
};

/**
 * A start at or below the given one that leaves every task still to be placed some start that a shift allows;
 * it says nothing of whether the hands are free then. Null when there is none above `least`.
 */
export const leavesRoom = (schedule: Schedule, node: number, start: number, least: number): number | null => {
  const { paths, model, spots } = schedule;
  let at = start;
  for (let moved = true; moved; ) {
    moved = false;
    for (const other of paths.kin(node)) {
      if (other === node || spots[other]) continue;
      const after = paths.least(node, other);
      if (after <= noPath / 2) continue;
      const before = paths.least(other, node);
      if (before <= noPath / 2) continue;
      const open = latestOf(model.nodes[other]?.anyStarts ?? [], at - before);
      if (open === null) return null;
      if (open < at + after) {
        at = open - after;
        moved = true;
        if (at < least) return null;
      }
    }
  }
  return at;
};

/** The latest member of a start set up to a minute. */
export const latestOf = (starts: Starts, to: number): number | null => {
  for (let i = starts.length - 1; i >= 0; i--) {
    const interval = starts[i];
    if (interval && interval.from <= to) return Math.min(interval.to, to);
  }
  return null;
};
