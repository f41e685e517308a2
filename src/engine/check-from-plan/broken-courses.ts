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
    const whole = !plates.includes(undefined);
    const claim = plan.courses.find((course) => course.course === goal.course);
    if (claim && claim.whole !== whole) {
      const detail = `${goal.name} is stated ${claim.whole ? "whole" : "not whole"}`;
      found.push(violation("wrong-lateness", goal.plateTasks, goal.due, detail));
    }
    if (plates.length === 0 || !whole) continue;
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
