import { propagateClauses } from "./clauses.ts";
import type { Core } from "./core.ts";
import { propagateDifferences } from "./differences.ts";

/** Draws every conclusion until nothing changes; false at a conflict, whose atoms are then in `clash`. */
export const propagate = (core: Core): boolean => {
  for (;;) {
    while (core.head < core.length) {
      const i = core.head++;
      const side = core.side[i] as number;
      const old = core.before[i] as number;
      const now = core.bound[i] as number;
      const wakes = core.wakes[side] as number[];
      for (let k = 0; k < wakes.length; k++) {
        const id = wakes[k] as number;
        if (core.asleep[id] === 0) {
          core.asleep[id] = 1;
          core.waiting[core.waitingLength++] = id;
        }
      }
      if (!propagateClauses(core, side, old, now) || !propagateDifferences(core, side, old, now)) {
        quiet(core);
        return false;
      }
    }
    if (core.waitingLength === 0) return true;
    // First come, first served: the one that has waited longest, slow ones last.
    let k = 0;
    while (k < core.waitingLength && core.propagators[core.waiting[k] as number]?.slow) k++;
    if (k === core.waitingLength) k = 0;
    const id = core.waiting[k] as number;
    core.waiting.copyWithin(k, k + 1, core.waitingLength);
    core.waitingLength--;
    core.asleep[id] = 0;
    if (core.propagators[id]?.run() === false) {
      quiet(core);
      return false;
    }
  }
};

/** After a conflict nobody waits: the levels undone take the changes back that they were woken for. */
const quiet = (core: Core): void => {
  for (let k = 0; k < core.waitingLength; k++) core.asleep[core.waiting[k] as number] = 0;
  core.waitingLength = 0;
};
