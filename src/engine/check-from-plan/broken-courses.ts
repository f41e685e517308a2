import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { violation } from "./violation.ts";

/** No course lands before it is due, and what the plan says about landing and lateness is so. */
export const brokenCourses = (prep: Prep, plan: Plan): readonly Violation[] => {
  const found: Violation[] = [];
  const ends = new Map(plan.placed.map((placed) => [placed.task, placed.end as number]));
  let late = 0;
  for (const goal of prep.courses) {
    const plates = goal.plateTasks.map((id) => ends.get(id));
    const placed = !plates.includes(undefined);
    const whole = placed && !lacksWork(prep, ends, goal.plateTasks);
    const claim = plan.courses.find((course) => course.course === goal.course);
    if (claim && claim.whole !== whole) {
      const detail = `${goal.name} is stated ${claim.whole ? "whole" : "not whole"}`;
      found.push(violation("wrong-lateness", goal.plateTasks, goal.due, detail));
    }
    if (plates.length === 0 || !placed) continue;
    const lands = goal.landsWith === "first" ? (plates[0] ?? 0) : Math.max(...(plates as number[]));
    late += Math.max(0, lands - goal.due);
    if (lands < goal.due) {
      found.push(violation("lands-early", goal.plateTasks, lands, `${goal.name} ${lands} < ${goal.due}`));
    }
    if (!claim || claim.lands !== lands || claim.lateMinutes !== Math.max(0, lands - goal.due)) {
      const detail = `${goal.name} lands ${lands}, stated ${claim?.lands} (${claim?.lateMinutes} late)`;
      found.push(violation("wrong-lateness", goal.plateTasks, lands, detail));
    }
  }
  const statedSum = plan.objective.lateMinutes;
  if (plan.unplaced.length === 0 && (statedSum !== late || (plan.status === "on-time") !== (late === 0))) {
    found.push(
      violation("wrong-lateness", [], 0, `${late} late in all, stated ${statedSum}, ${plan.status}`),
    );
  }
  return found;
};

/** True when something that these tasks are made from has no place, however far back. */
const lacksWork = (prep: Prep, ends: ReadonlyMap<string, number>, plates: readonly string[]): boolean => {
  const seen = new Set<string>();
  const stack = [...plates];
  for (let task = stack.pop(); task !== undefined; task = stack.pop()) {
    if (seen.has(task)) continue;
    seen.add(task);
    if (!ends.has(task)) return true;
    for (const lag of prep.lags) {
      const made = lag.reason !== "wash-before" && lag.reason !== "plate-together";
      if (lag.after === task && made) stack.push(lag.before);
    }
  }
  return false;
};
