import type { Placed, Plan } from "../model/plan.ts";
import type { Prep, Segment, Task } from "../model/prep.ts";

/** A segment where the plan puts it: [from, to). */
export type Laid = {
  readonly task: Task;
  readonly placed: Placed;
  readonly segment: Segment;
  readonly from: number;
  readonly to: number;
};

/** A segment's length in the plan: its likely minutes, rounded up to a whole minute. */
export const wholeMinutes = (segment: Segment): number => Math.max(0, Math.ceil(segment.minutes.likely));

/** The prep with each task done in the way that the plan states; a way that there is not leaves the task without segments. */
export const asPlanned = (prep: Prep, plan: Plan): Prep => {
  const ways = new Map(plan.placed.map((placed) => [placed.task, placed.way ?? 0]));
  if (![...ways.values()].some((way) => way !== 0)) return prep;
  return {
    ...prep,
    tasks: prep.tasks.map((task) => {
      const way = ways.get(task.id) ?? 0;
      return way === 0 ? task : { ...task, segments: task.ways?.[way - 1] ?? [] };
    }),
  };
};

/** Every segment of every known placed task, at the moment the plan states for it. */
export const layOut = (prep: Prep, plan: Plan): readonly Laid[] => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  return plan.placed.flatMap((placed) => {
    const task = tasks.get(placed.task);
    if (!task) return [];
    return task.segments.flatMap((segment, i): Laid[] => {
      const from = placed.segments[i];
      if (from === undefined) return [];
      return [{ task, placed, segment, from, to: from + wholeMinutes(segment) }];
    });
  });
};
