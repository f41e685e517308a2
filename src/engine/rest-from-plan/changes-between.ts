import type { Plan } from "../model/plan.ts";
import type { Moved, Progress } from "../model/rest.ts";

/** A start that moves by less than this is no change that a cook would be told, minutes. Common practice, no source. */
const leastMove = 1;

/** What stands otherwise in the new plan than in the old one, of the tasks that have not begun, in order of time. */
export const changesBetween = (before: Plan, after: Plan, progress: Progress): readonly Moved[] => {
  const isDone = new Set(progress.done.map((entry) => entry.task));
  const old = new Map(before.placed.map((placed) => [placed.task, placed]));
  const fresh = new Map(after.placed.map((placed) => [placed.task, placed]));
  // What is made again stands there again; what is left out is told as that.
  const begun = new Set([
    ...[...progress.done, ...progress.running]
      .map((entry) => entry.task)
      .filter((task) => !(fresh.has(task) && isDone.has(task))),
    ...(progress.skipped ?? []),
  ]);
  const changes: Moved[] = [];
  for (const task of new Set([...old.keys(), ...fresh.keys()])) {
    if (begun.has(task)) continue;
    const was = old.get(task) ?? null;
    const is = fresh.get(task) ?? null;
    const same =
      was !== null &&
      is !== null &&
      Math.abs(was.start - is.start) < leastMove &&
      was.cook === is.cook &&
      was.oven === is.oven;
    if (same) continue;
    changes.push({
      task,
      before: was === null ? null : { start: was.start, cook: was.cook, oven: was.oven },
      after: is === null ? null : { start: is.start, cook: is.cook, oven: is.oven },
      because: is?.because ?? [],
    });
  }
  const at = ({ before: was, after: is }: Moved): number => is?.start ?? was?.start ?? 0;
  return changes.sort((a, b) => at(a) - at(b) || (a.task < b.task ? -1 : 1));
};
