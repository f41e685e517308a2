import type { Prep, TaskId } from "../model/prep.ts";
import type { Stuck } from "../model/rest.ts";

/** Why some tasks can have no place in a rest, whatever else is moved. */
export const stuckTasks = (prep: Prep, unplaced: readonly TaskId[]): readonly Stuck[] => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const now = prep.span?.from ?? 0;
  const there = prep.crew.filter((cook) => cook.shifts.some((shift) => shift.to > now));
  return unplaced.map((id): Stuck => {
    const task = tasks.get(id);
    const uses = (task?.segments ?? []).flatMap((segment) => segment.uses);
    for (const use of uses) {
      const named = prep.ovens.find((oven) => oven.id === use.resource);
      if (use.resource === "oven" || named !== undefined) {
        const fits = (named === undefined ? prep.ovens : [named]).some((oven) => oven.shelves >= use.amount);
        if (!fits) return { task: id, why: "no-oven", what: use.resource };
        continue;
      }
      const resource = prep.resources.find((r) => r.id === use.resource);
      if (resource === undefined || resource.capacity < use.amount)
        return { task: id, why: "no-equipment", what: use.resource };
    }
    const attended = (task?.segments ?? []).some((segment) => segment.attention !== "none");
    if (attended && !there.some((cook) => task?.cooks?.includes(cook.name) ?? true))
      return { task: id, why: "no-cook", what: "" };
    return { task: id, why: "unknown", what: "" };
  });
};
