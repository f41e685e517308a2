import { type Moment, minutes, moment } from "../measure/units.ts";
import type { CourseLanding, LevelValue, Placed, Plan } from "../model/plan.ts";
import type { GoalLevel, LagReason, Prep, TaskId } from "../model/prep.ts";
import { because } from "./explain.ts";
import { costOf, placesOf } from "./objective.ts";
import { type Schedule, spotOf } from "./schedule.ts";

/** The finished schedule in the words of the model. */
export const summary = (prep: Prep, schedule: Schedule, bounds: readonly number[] = []): Plan => {
  const placed = placedTasks(prep, schedule);
  const unplaced = prep.tasks.filter((_, n) => spotOf(schedule, n) === null).map((task) => task.id);
  const courses = landings(prep, placed);
  const levels = levelsOf(schedule, bounds);
  const levelValue = (level: GoalLevel): number => levels.find((l) => l.level === level)?.value ?? 0;
  const late = courses.reduce((sum, course) => sum + course.lateMinutes, 0);
  return {
    placed,
    courses,
    unplaced,
    status: unplaced.length > 0 ? "partial" : late > 0 ? "late" : "on-time",
    objective: {
      lateMinutes: minutes(late),
      holdMinutes: minutes(levelValue("hold")),
      calmMinutes: minutes(levelValue("calm")),
      levels,
    },
    load: schedule.model.cooks.map((cook, c) => ({
      cook,
      handsMinutes: minutes(
        schedule.model.nodes.reduce(
          (sum, node, n) => sum + (schedule.cook[n] === c ? node.handsMinutes : 0),
          0,
        ),
      ),
    })),
    violations: [],
  };
};

/** Each level's value, with the bound that is known for it: nothing is below none. */
export const levelsOf = (schedule: Schedule, bounds: readonly number[]): readonly LevelValue[] => {
  const cost = costOf(schedule);
  const at = placesOf(schedule.model);
  let proved = cost[0] === 0;
  return schedule.model.levels.map((level, l) => {
    const value = cost[at(level)] ?? 0;
    const bound = proved ? Math.min(value, bounds[l] ?? 0) : 0;
    proved = proved && bound === value;
    return { level, value, bound, proved };
  });
};

const placedTasks = (prep: Prep, schedule: Schedule): readonly Placed[] => {
  const { model } = schedule;
  const placed = prep.tasks.flatMap((task, n): Placed[] => {
    const spot = spotOf(schedule, n);
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
  const undone = lacking(prep, where);
  return prep.courses.map((goal) => {
    const ends = goal.plateTasks.flatMap((id) => where.get(id)?.end ?? []);
    const counted = goal.landsWith === "first" ? ends.slice(0, 1) : ends;
    const lands = Math.max(...(counted.length > 0 ? counted : [goal.due]));
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
      whole: !goal.plateTasks.some((id) => undone.has(id)),
      firstTask: first?.task ?? null,
      firstStart: first?.start ?? null,
    };
  });
};

/** Lags that only keep kit apart or plates together: what stands before them is not in what follows. */
const apart: ReadonlySet<LagReason> = new Set(["wash-before", "plate-together"]);

/** Tasks that found no place, and all that is made from what they make. */
const lacking = (prep: Prep, where: ReadonlyMap<TaskId, Placed>): ReadonlySet<TaskId> => {
  const undone = new Set(prep.tasks.flatMap((task) => (where.has(task.id) ? [] : [task.id])));
  const next = new Map<TaskId, TaskId[]>();
  for (const lag of prep.lags) {
    if (!apart.has(lag.reason)) next.set(lag.before, [...(next.get(lag.before) ?? []), lag.after]);
  }
  // The set grows while it is walked.
  for (const task of undone) for (const after of next.get(task) ?? []) undone.add(after);
  return undone;
};
