import type { CourseGoal, Lag, Task, TaskId } from "../model/prep.ts";

/** When a task would begin and end if all went as late as the courses let it, hands and places not looked at. */
export type LatestTimes = (task: TaskId) => { readonly start: number; readonly end: number };

/** A rough order of the work: each task as late as what follows it lets it. What leads nowhere stands at its course. */
export const latestTimes = (
  tasks: readonly Task[],
  lags: readonly Lag[],
  courses: readonly CourseGoal[],
): LatestTimes => {
  const length = new Map(
    tasks.map((task) => [task.id, task.segments.reduce((sum, s) => sum + Math.ceil(s.minutes.likely), 0)]),
  );
  const dueOf = new Map(courses.map((goal) => [goal.course, goal.due as number]));
  const course = new Map(tasks.map((task) => [task.id, dueOf.get(task.course) ?? 0]));
  const after = new Map<TaskId, Lag[]>();
  for (const lag of lags) {
    if (lag.reason === "plate-together") continue;
    after.set(lag.before, [...(after.get(lag.before) ?? []), lag]);
  }
  const known = new Map<TaskId, number>();
  const under = new Set<TaskId>();
  const startOf = (task: TaskId): number => {
    const found = known.get(task);
    if (found !== undefined) return found;
    const own = length.get(task) ?? 0;
    let start = (course.get(task) ?? 0) - own;
    under.add(task);
    for (const lag of after.get(task) ?? []) {
      if (under.has(lag.after) || !length.has(lag.after)) continue;
      const edge = startOf(lag.after) + (lag.afterEdge === "end" ? (length.get(lag.after) ?? 0) : 0);
      start = Math.min(start, edge - lag.least - (lag.beforeEdge === "end" ? own : 0));
    }
    under.delete(task);
    known.set(task, start);
    return start;
  };
  return (task) => ({ start: startOf(task), end: startOf(task) + (length.get(task) ?? 0) });
};
