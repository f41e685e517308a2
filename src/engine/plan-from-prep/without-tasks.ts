import { minutes } from "../measure/units.ts";
import type { Lag, Prep, Task } from "../model/prep.ts";

/**
 * The work without some tasks, so that whatever can be done with all of it, in whichever way these are done, can be done with
 * this, and costs no more: demands on them are let go, and what waits for one of them still waits for what came before it, by
 * the shortest of its ways. A course with a plate among them may land when it likes.
 */
export const withoutTasks = (prep: Prep, out: readonly number[]): Prep => {
  if (out.length === 0) return prep;
  const gone = new Map(
    out.flatMap((t) => (prep.tasks[t] ? [[prep.tasks[t].id, prep.tasks[t]] as const] : [])),
  );
  const stays = (id: string): boolean => !gone.has(id);
  return {
    ...prep,
    tasks: prep.tasks.filter((task) => stays(task.id)),
    lags: [
      ...prep.lags.filter((lag) => stays(lag.before) && stays(lag.after)),
      ...[...gone.values()].flatMap((task) => across(prep, task, stays)),
    ],
    courses: prep.courses.map((goal) => (goal.plateTasks.every(stays) ? goal : { ...goal, plateTasks: [] })),
    holds: prep.holds.filter((hold) => stays(hold.task) && stays(hold.plate)),
    ...(prep.sameCook === undefined ? {} : { sameCook: prep.sameCook.map((group) => group.filter(stays)) }),
    ...(prep.freeFrom === undefined
      ? {}
      : { freeFrom: prep.freeFrom.filter((pair) => stays(pair.before) && stays(pair.after)) }),
  };
};

/** What waits for a task waits for what the task waits for. */
const across = (prep: Prep, task: Task, stays: (id: string) => boolean): readonly Lag[] => {
  const lengths = [task.segments, ...(task.ways ?? [])].map((segments) =>
    segments.reduce((sum, segment) => sum + Math.max(0, Math.ceil(segment.minutes.likely)), 0),
  );
  const into = prep.lags.filter((lag) => lag.after === task.id && stays(lag.before));
  const from = prep.lags.filter((lag) => lag.before === task.id && stays(lag.after));
  return into.flatMap((a) =>
    from.map((b): Lag => {
      // From the one edge of the task to the other, in the way that takes least.
      const within = Math.min(
        ...lengths.map(
          (length) => (b.beforeEdge === "end" ? length : 0) - (a.afterEdge === "end" ? length : 0),
        ),
      );
      return {
        before: a.before,
        beforeEdge: a.beforeEdge,
        after: b.after,
        afterEdge: b.afterEdge,
        least: minutes(Math.ceil(a.least) + within + Math.ceil(b.least)),
        most: null,
        reason: b.reason,
      };
    }),
  );
};
