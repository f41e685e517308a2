import { optimise } from "./exact/optimise.ts";
import { type Memory, remember, restore } from "./memory.ts";
import { costOf } from "./objective.ts";
import type { Schedule } from "./schedule.ts";

/** Tries before a proof is begun: it goes the faster the better the schedule it starts from. */
export const triesBeforeProof = 3000;
/** Larger problems are not tried: the proof would take more room than it is worth. */
const mostTasks = 500;

/** Proves what it can, and leaves the schedule at the best that was found on the way; gives the bound of each level. */
export const prove = (
  schedule: Schedule,
  conflicts: number,
  seed: number,
  keepGoing: () => boolean,
  tell: () => void,
): readonly number[] => {
  if (schedule.model.taskCount > mostTasks) return [];
  const whole = costOf(schedule)[0] === 0;
  const found = (memory: Memory): void => {
    restore(schedule, memory);
    tell();
  };
  return optimise(schedule.model, whole ? remember(schedule) : null, seed, { conflicts, keepGoing, found })
    .bounds;
};
