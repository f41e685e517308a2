import { optimise, type Proof } from "./exact/optimise.ts";
import { type Memory, remember, restore } from "./memory.ts";
import { costOf } from "./objective.ts";
import type { Schedule } from "./schedule.ts";

/** Tries before a proof is begun, for each task: it goes the faster the better the schedule it starts from. */
export const triesBeforeProof = 2;
/** Larger problems are not tried: the proof would take more room than it is worth. */
const mostTasks = 500;

/**
 * Proves what it can, and leaves the schedule at the best that was found on the way. From a schedule that is not whole it
 * looks for one near it, with no course later than so many minutes (null: as late as may be).
 */
export const prove = (
  schedule: Schedule,
  conflicts: number,
  seed: number,
  keepGoing: () => boolean,
  tell: () => void,
  late: number | null = null,
): Pick<Proof, "bounds" | "impossible"> => {
  const { model } = schedule;
  // What was given up beforehand can stand nowhere, so there is no whole schedule to look for.
  const givenUp = model.nodes.some((node, n) => n < model.taskCount && node.anyStarts.length === 0);
  if (givenUp) return { bounds: [], impossible: true };
  if (model.taskCount > mostTasks) return { bounds: [], impossible: false };
  const standing = remember(schedule);
  const known = costOf(schedule)[0] === 0 ? standing : null;
  const found = (memory: Memory): void => {
    restore(schedule, memory);
    tell();
  };
  return optimise(
    model,
    known,
    seed,
    { conflicts, keepGoing, found },
    known === null ? { schedule: standing, late } : null,
  );
};
