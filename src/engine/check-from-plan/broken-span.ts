import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { violation } from "./violation.ts";

/** Where the problem has a beginning and an end, nothing stands before the one or ends after the other; and a task with hours of its own begins in them. */
export const brokenSpan = (prep: Prep, plan: Plan): readonly Violation[] => {
  const { span } = prep;
  const starts = new Map(prep.tasks.map((task) => [task.id, task.starts]));
  return plan.placed.flatMap(({ task, start, end }): readonly Violation[] => {
    if (span && (start < span.from || end > span.to))
      return [violation("outside-span", [task], start, `${start}-${end}, not in ${span.from}-${span.to}`)];
    const own = starts.get(task);
    if (own && (start < own.from || start > own.to))
      return [violation("outside-span", [task], start, `${start}, not in ${own.from}-${own.to}`)];
    return [];
  });
};
