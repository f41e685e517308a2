import { minutes } from "../measure/units.ts";
import type { Lag, LagReason, Prep, TaskId, VesselStay } from "../model/prep.ts";
import type { Progress } from "../model/rest.ts";

/** Lags that only tie kit and plates: food does not flow along them. */
const apart: ReadonlySet<LagReason> = new Set(["wash-before", "plate-together", "preheat"]);

/**
 * What is made again with a task whose food is lost: the work of its dish that led to it, and what has been done with it
 * since. Work that was never begun is done anyway.
 */
export const madeAnew = (prep: Prep, progress: Progress): ReadonlySet<TaskId> => {
  const begun = new Set([...progress.done, ...progress.running].map((entry) => entry.task));
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const found = new Set((progress.anew ?? []).filter((task) => begun.has(task)));
  const walk = (way: (lag: Lag) => readonly [TaskId, TaskId]): void => {
    // The set grows while it is walked.
    for (const task of found)
      for (const lag of prep.lags) {
        const [from, to] = way(lag);
        if (from !== task || apart.has(lag.reason) || !begun.has(to)) continue;
        if (tasks.get(to)?.dish === tasks.get(task)?.dish) found.add(to);
      }
  };
  walk((lag) => [lag.before, lag.after]);
  walk((lag) => [lag.after, lag.before]);
  return found;
};

/** The prep without some tasks: what followed one of them follows what it followed, and a vessel it would have filled is filled next. */
export const without = (prep: Prep, out: ReadonlySet<TaskId>): Prep => {
  if (out.size === 0) return prep;
  let lags = prep.lags;
  let stays = prep.stays ?? [];
  for (const id of out) {
    const before = lags.filter((lag) => lag.after === id && !apart.has(lag.reason));
    const after = lags.filter((lag) => lag.before === id && !apart.has(lag.reason));
    const next = after.find((lag) => !out.has(lag.after))?.after;
    stays = stays.flatMap((stay): readonly VesselStay[] => {
      if (stay.to === id) return [{ ...stay, to: null }];
      if (stay.from !== id) return [stay];
      return next === undefined || next === stay.to ? [] : [{ ...stay, from: next }];
    });
    lags = [
      ...lags.filter((lag) => lag.before !== id && lag.after !== id),
      ...before.flatMap((one) =>
        after.map(
          (other): Lag => ({
            before: one.before,
            beforeEdge: one.beforeEdge,
            after: other.after,
            afterEdge: other.afterEdge,
            least: minutes(0),
            most: null,
            reason: "method-order",
          }),
        ),
      ),
    ];
  }
  return {
    ...prep,
    tasks: prep.tasks.filter((task) => !out.has(task.id)),
    lags,
    courses: prep.courses.map((goal) => ({
      ...goal,
      plateTasks: goal.plateTasks.filter((id) => !out.has(id)),
    })),
    holds: prep.holds.filter((hold) => !out.has(hold.task) && !out.has(hold.plate)),
    ...(prep.stays === undefined ? {} : { stays }),
  };
};
