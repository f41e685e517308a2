import { exactly } from "../measure/estimate.ts";
import { type Moment, minutes, moment } from "../measure/units.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { Lag, Prep, Segment, Task, TaskId, VesselStay } from "../model/prep.ts";
import type { Overrun, Progress, Rest } from "../model/rest.ts";
import { handsApart } from "./hands-apart.ts";
import { push } from "./push.ts";
import { settingsAt } from "./settings-at.ts";

/**
 * What is left of a plan at a moment of the night, as a prep of its own: done tasks are gone and leave hours behind for
 * what follows them, running ones go on with their cook and oven for as long as they are now thought to take, and the
 * rest begins at `now` at the earliest. With it the plan's own order, pushed only as far as it must be.
 */
export const restFromPlan = (prep: Prep, plan: Plan, progress: Progress): Rest => {
  const now = moment(Math.ceil(progress.now));
  const done = new Map(progress.done.map((d) => [d.task, d]));
  const running = new Map(progress.running.filter((r) => !done.has(r.task)).map((r) => [r.task, r] as const));
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const left = prep.tasks.filter((task) => !done.has(task.id));
  const goingOn = apart(
    placed,
    left.flatMap((task): [TaskId, Task][] => {
      const run = running.get(task.id);
      const place = placed.get(task.id);
      return run === undefined || place === undefined
        ? []
        : [[task.id, remainder(task, place, now, run.ends)]];
    }),
  );
  const overruns: Overrun[] = [];
  const tasks = left.map((task): Task => {
    const on = goingOn.get(task.id);
    if (on !== undefined) return on;
    return { ...task, starts: hoursOf(task, prep.lags, done, now, overruns) };
  });
  // What lags count from a running task's beginning lies in the past, and is counted in its hours.
  const lags = prep.lags.flatMap((lag): Lag[] => {
    if (done.has(lag.before) || done.has(lag.after)) return [];
    if (running.has(lag.after)) return [];
    const before = running.get(lag.before);
    if (before === undefined || lag.beforeEdge === "end") return [lag];
    const ago = now - before.start;
    return [
      { ...lag, least: minutes(lag.least - ago), most: lag.most === null ? null : minutes(lag.most - ago) },
    ];
  });
  const span = { from: now, to: prep.span?.to ?? lastMoment(prep) };
  const rest: Prep = {
    ...prep,
    tasks,
    lags,
    courses: prep.courses
      .map((goal) => ({ ...goal, plateTasks: goal.plateTasks.filter((id) => !done.has(id)) }))
      .filter((goal) => goal.plateTasks.length > 0),
    holds: prep.holds.filter((hold) => !done.has(hold.task) && !done.has(hold.plate)),
    ...(prep.stays === undefined ? {} : { stays: staysLeft(prep.stays, (task) => done.has(task)) }),
    span,
    ovens: settingsAt(prep, plan, now),
    ovensCold: "once",
  };
  return { prep: rest, pushed: push(rest, plan, goingOn, now), overruns };
};

/** Running tasks by their names, those of each cook so that the hands can do them all. */
const apart = (
  placed: ReadonlyMap<TaskId, Placed>,
  running: readonly (readonly [TaskId, Task])[],
): ReadonlyMap<TaskId, Task> => {
  const cookOf = (task: TaskId): string | null => placed.get(task)?.cook ?? null;
  const cooks = [...new Set(running.map(([task]) => cookOf(task)))];
  return new Map(
    cooks.flatMap((cook) => {
      const own = running.flatMap(([id, task]) => (cookOf(id) === cook ? [task] : []));
      return (cook === null ? own : handsApart(own)).map((task) => [task.id, task] as const);
    }),
  );
};

/** Vessels that are in use since before now, or will be: what was washed up is free, what was filled is taken already. */
const staysLeft = (stays: readonly VesselStay[], isDone: (task: TaskId) => boolean): readonly VesselStay[] =>
  stays
    .filter((stay) => stay.to === null || !isDone(stay.to))
    .map((stay) => (stay.from !== null && isDone(stay.from) ? { ...stay, from: null } : stay));

/**
 * What is left of a running task: the segment that is under way, and those after. When it ends later than planned, the
 * longest of them does: a roast that is late stands longer in the oven, and nobody puts it in for longer.
 */
const remainder = (task: Task, place: Placed, now: Moment, ends: Moment): Task => {
  const current = Math.max(
    0,
    place.segments.findLastIndex((start) => start <= now),
  );
  const lengths = task.segments
    .slice(current)
    .map((segment) => Math.max(0, Math.ceil(segment.minutes.likely)));
  const whole = Math.max(1, Math.ceil(ends) - now);
  const before = Math.ceil((place.segments[current] ?? now) + (lengths[0] ?? 0)) - now;
  if (lengths.length > 0) lengths[0] = Math.max(1, before);
  const over = whole - lengths.reduce((sum, n) => sum + n, 0);
  const stretched = over > 0 ? lengths.indexOf(Math.max(...lengths)) : 0;
  if (lengths.length > 0) lengths[stretched] = Math.max(1, (lengths[stretched] ?? 0) + over);
  const segments = task.segments
    .slice(current)
    .map(
      (segment, s): Segment =>
        s === 0 || s === stretched ? { ...segment, minutes: exactly(minutes(lengths[s] ?? 1)) } : segment,
    );
  return {
    ...task,
    segments: segments.map((segment) => ({
      ...segment,
      uses: segment.uses.map((use) =>
        use.resource === "oven" && place.oven !== null ? { ...use, resource: place.oven } : use,
      ),
    })),
    starts: { from: now, to: now },
    ...(place.cook === null ? {} : { cooks: [place.cook] }),
  };
};

/** The hours in which a task may begin, by what was done before it. Where these have passed, it begins when it can. */
const hoursOf = (
  task: Task,
  lags: readonly Lag[],
  done: ReadonlyMap<TaskId, { readonly start: Moment; readonly end: Moment }>,
  now: Moment,
  overruns: Overrun[],
): { readonly from: Moment; readonly to: Moment } => {
  const length = task.segments.reduce((sum, segment) => sum + Math.ceil(segment.minutes.likely), 0);
  let from: number = Math.max(now, task.starts?.from ?? now);
  let to: number = task.starts?.to ?? Number.MAX_SAFE_INTEGER;
  for (const lag of lags) {
    const before = lag.after === task.id ? done.get(lag.before) : undefined;
    if (before === undefined) continue;
    const edge = lag.beforeEdge === "end" ? before.end : before.start;
    const toStart = lag.afterEdge === "end" ? length : 0;
    from = Math.max(from, Math.ceil(edge + lag.least) - toStart);
    if (lag.most === null) continue;
    const latest = Math.floor(edge + lag.most) - toStart;
    // A limit that has passed is said, and does not stand in the way of doing what can still be done.
    if (latest < from)
      overruns.push({ before: lag.before, after: task.id, reason: lag.reason, by: minutes(from - latest) });
    else to = Math.min(to, latest);
  }
  return { from: moment(from), to: moment(Math.max(from, to)) };
};

const lastMoment = (prep: Prep): Moment =>
  moment(
    Math.max(
      ...prep.crew.flatMap((cook) => cook.shifts.map((shift) => shift.to as number)),
      ...prep.courses.map((goal) => goal.due as number),
      0,
    ) + 720,
  );
