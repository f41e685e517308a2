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
    if (plates.length === 0 || plates.includes(undefined)) continue;
    const lands = Math.max(...(plates as number[]));
    late += Math.max(0, lands - goal.due);
    if (lands < goal.due) {
      found.push(violation("lands-early", goal.plateTasks, lands, `${goal.name} ${lands} < ${goal.due}`));
    }
    const stated = plan.courses.find((course) => course.course === goal.course);
    if (!stated || stated.lands !== lands || stated.lateMinutes !== Math.max(0, lands - goal.due)) {
      const detail = `${goal.name} lands ${lands}, stated ${stated?.lands} (${stated?.lateMinutes} late)`;
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
