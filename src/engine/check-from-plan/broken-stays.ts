import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { violation } from "./violation.ts";

/** A vessel in use: [from, to), and the tasks that say so. */
type Taken = {
  readonly from: number;
  readonly to: number;
  readonly amount: number;
  readonly tasks: string[];
};

/**
 * At no moment are more vessels of a size in use than there are: each from the beginning of the task that takes it to the
 * end of the task that washes it up, or for good. What is said to take the same resource for a segment counts with them.
 */
export const brokenStays = (prep: Prep, plan: Plan): readonly Violation[] => {
  const stays = prep.stays ?? [];
  if (stays.length === 0) return [];
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const taken = new Map<string, Taken[]>();
  const take = (resource: string, use: Taken): void => {
    taken.set(resource, [...(taken.get(resource) ?? []), use]);
  };
  for (const stay of stays) {
    const first = stay.from === null ? null : placed.get(stay.from);
    // Where the task that fills it has no place, nothing is in it.
    if (first === undefined) continue;
    const last = stay.to === null ? null : placed.get(stay.to);
    take(stay.resource, {
      from: first?.start ?? Number.NEGATIVE_INFINITY,
      // Unwashed it is in nobody's way once washing it was given up, beyond the work that it was filled for.
      to: last === null ? Number.POSITIVE_INFINITY : (last?.end ?? first?.end ?? Number.NEGATIVE_INFINITY),
      amount: stay.amount,
      tasks: [stay.from, stay.to].filter((id) => id !== null),
    });
  }
  for (const task of prep.tasks) {
    const at = placed.get(task.id);
    task.segments.forEach((segment, s) => {
      const from = at?.segments[s];
      for (const use of segment.uses)
        if (from !== undefined && taken.has(use.resource))
          take(use.resource, {
            from,
            to: from + Math.max(0, Math.ceil(segment.minutes.likely)),
            amount: use.amount,
            tasks: [task.id],
          });
    });
  }
  return [...taken].flatMap(([id, uses]) => {
    const there = prep.resources.find((resource) => resource.id === id)?.capacity ?? 0;
    return uses.flatMap((use) => {
      const at = uses.filter((other) => other.from <= use.from && (use.from < other.to || other === use));
      const sum = at.reduce((total, other) => total + other.amount, 0);
      if (sum <= there + 1e-6) return [];
      const tasks = [...new Set(at.flatMap((other) => other.tasks))];
      return [violation("vessel-over", tasks, Math.max(use.from, 0), `${id} ${sum} > ${there}`)];
    });
  });
};
