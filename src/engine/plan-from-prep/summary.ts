import { type Moment, minutes, moment } from "../measure/units.ts";
import type { CourseLanding, Placed, Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { because } from "./explain.ts";
import { costOf } from "./objective.ts";
import type { Schedule } from "./schedule.ts";

/** The finished schedule in the words of the model. */
export const summary = (prep: Prep, schedule: Schedule): Plan => {
  const placed = placedTasks(prep, schedule);
  const unplaced = prep.tasks.filter((_, n) => !schedule.spots[n]).map((task) => task.id);
  const courses = landings(prep, placed);
  const [, , hold, calm] = costOf(schedule);
  const late = courses.reduce((sum, course) => sum + course.lateMinutes, 0);
  return {
    placed,
    courses,
    unplaced,
    status: unplaced.length > 0 ? "partial" : late > 0 ? "late" : "on-time",
    objective: { lateMinutes: minutes(late), holdMinutes: minutes(hold), calmMinutes: minutes(calm) },
    load: schedule.model.cooks.map((cook, c) => ({
      cook,
      handsMinutes: minutes(
        schedule.model.nodes.reduce(
          (sum, node, n) => sum + (schedule.spots[n]?.cook === c ? node.handsMinutes : 0),
          0,
        ),
      ),
    })),
    violations: [],
  };
};

const placedTasks = (prep: Prep, schedule: Schedule): readonly Placed[] => {
  const { model } = schedule;
  const placed = prep.tasks.flatMap((task, n): Placed[] => {
    const spot = schedule.spots[n];
    if (!spot) return [];
    const start = spot.start + model.origin;
    const segments: Moment[] = [];
    let at = start;
    for (const segment of task.segments) {
      segments.push(moment(at));
      at += Math.max(0, Math.ceil(segment.minutes.likely));
    }
    return [
      {
        task: task.id,
        start: moment(start),
        end: moment(at),
        segments,
        cook: spot.cook < 0 ? null : (model.cooks[spot.cook] ?? null),
        oven: spot.oven < 0 ? null : (model.ovenIds[spot.oven] ?? null),
        because: because(prep, schedule, n, spot),
      },
    ];
  });
  return placed.sort((a, b) => a.start - b.start || a.end - b.end);
};

const landings = (prep: Prep, placed: readonly Placed[]): readonly CourseLanding[] => {
  const where = new Map(placed.map((p) => [p.task, p]));
  return prep.courses.map((goal) => {
    const ends = goal.plateTasks.flatMap((id) => where.get(id)?.end ?? []);
    const lands = Math.max(...(ends.length > 0 ? ends : [goal.due]));
    const own = prep.tasks
      .filter((task) => task.course === goal.course)
      .flatMap((task) => where.get(task.id) ?? []);
    const first = own.reduce<Placed | null>((a, b) => (a && a.start <= b.start ? a : b), null);
    return {
      course: goal.course,
      name: goal.name,
      due: goal.due,
      lands: moment(lands),
      lateMinutes: minutes(Math.max(0, lands - goal.due)),
      whole: ends.length === goal.plateTasks.length,
      firstTask: first?.task ?? null,
      firstStart: first?.start ?? null,
    };
  });
};
