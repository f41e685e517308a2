import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { wholeMinutes } from "./lay-out.ts";
import { violation } from "./violation.ts";

/** Every task stands in the plan once (or is named as unplaced), and its segments run back to back at full length. */
export const brokenShape = (prep: Prep, plan: Plan): readonly Violation[] => {
  const found: Violation[] = [];
  const known = new Map(prep.tasks.map((task) => [task.id, task]));
  const times = new Map<string, number>();
  for (const placed of plan.placed) times.set(placed.task, (times.get(placed.task) ?? 0) + 1);
  for (const id of plan.unplaced) times.set(id, (times.get(id) ?? 0) + 1);
  for (const task of prep.tasks) {
    const n = times.get(task.id) ?? 0;
    if (n !== 1) found.push(violation("missing-task", [task.id], 0, `${n} times`));
  }
  for (const id of times.keys()) {
    if (!known.has(id)) found.push(violation("missing-task", [id], 0, "not in the prep"));
  }
  if (plan.unplaced.length > 0 && plan.status !== "partial") {
    found.push(violation("missing-task", plan.unplaced, 0, `status ${plan.status}`));
  }

  for (const placed of plan.placed) {
    const task = known.get(placed.task);
    if (!task) continue;
    let at: number = placed.start;
    const ok =
      Number.isInteger(placed.start) &&
      placed.segments.length === task.segments.length &&
      task.segments.every((segment, i) => {
        const same = placed.segments[i] === at;
        at += wholeMinutes(segment);
        return same;
      }) &&
      placed.end === at;
    if (!ok) found.push(violation("segment-gap", [task.id], placed.start, `ends ${placed.end}, not ${at}`));
  }
  return found;
};
