import { exactly } from "../measure/estimate.ts";
import { type Moment, minutes, moment } from "../measure/units.ts";
import type { CourseGoal, Prep, Task } from "../model/prep.ts";
import type { Progress } from "../model/rest.ts";

/** Course times further apart than this belong to two services. */
const serviceGap = 180;

/** The prep with who and what is still there, with courses when they are asked for, and work as long as it is now thought to take. */
export const kitchenNow = (prep: Prep, progress: Progress): Prep => {
  const lost = new Map((progress.lost ?? []).map(({ resource, amount }) => [resource, amount]));
  const longer = new Map((progress.longer ?? []).map((entry) => [entry.task, entry.minutes as number]));
  const moved = coursesMoved(prep.courses, progress);
  return {
    ...prep,
    crew: prep.crew.map((cook) => {
      const leaves = (progress.away ?? []).filter((entry) => entry.cook === cook.name);
      if (leaves.length === 0) return cook;
      const from = Math.min(...leaves.map((entry) => entry.from as number));
      return {
        ...cook,
        shifts: cook.shifts
          .map((shift) => ({ from: shift.from, to: moment(Math.min(shift.to, from)) }))
          .filter((shift) => shift.from < shift.to),
      };
    }),
    ovens: prep.ovens.filter((oven) => !lost.has(oven.id)),
    resources: prep.resources.map((resource) => ({
      ...resource,
      capacity: Math.max(0, resource.capacity - (lost.get(resource.id) ?? 0)),
    })),
    courses: prep.courses.map((goal) => ({ ...goal, due: moment(goal.due + (moved.get(goal.course) ?? 0)) })),
    tasks:
      longer.size === 0 ? prep.tasks : prep.tasks.map((task) => stretched(task, longer.get(task.id) ?? 0)),
  };
};

/** By how many minutes each course is asked for later: those that follow one in its service move with it, unless they are asked for too. */
export const coursesMoved = (
  courses: readonly CourseGoal[],
  { asked = [] }: Pick<Progress, "asked">,
): ReadonlyMap<number, number> => {
  const own = new Map(asked.map((entry) => [entry.course, entry.minutes as number]));
  const moved = new Map<number, number>();
  let by = 0;
  let last: Moment | null = null;
  for (const goal of courses.toSorted((a, b) => a.due - b.due || a.course - b.course)) {
    if (last !== null && goal.due - last > serviceGap) by = 0;
    by = own.get(goal.course) ?? by;
    moved.set(goal.course, by);
    last = goal.due;
  }
  return moved;
};

/** The longest segment takes the minutes more. */
const stretched = (task: Task, by: number): Task => {
  if (by === 0 || task.segments.length === 0) return task;
  const lengths = task.segments.map((segment) => Math.ceil(segment.minutes.likely));
  const longest = lengths.indexOf(Math.max(...lengths));
  return {
    ...task,
    segments: task.segments.map((segment, s) =>
      s === longest ? { ...segment, minutes: exactly(minutes((lengths[s] ?? 0) + by)) } : segment,
    ),
  };
};
