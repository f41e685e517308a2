import { type Moment, type minutes, moment } from "../measure/units.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { CourseGoal, Lag, Prep, Task, TaskId, VesselStay } from "../model/prep.ts";
import type { Allowance, Progress, Rest } from "../model/rest.ts";
import { type Forward, forward } from "./forward.ts";
import { coursesMoved, kitchenNow } from "./kitchen-now.ts";
import { type GoingOn, handsUntil, runningNow } from "./running-now.ts";
import { settingsAt } from "./settings-at.ts";
import { wholeLength } from "./taken.ts";
import { madeAnew, without } from "./work-left.ts";

/** Cooks who stay on do so for this long at most, minutes. Common practice, no source. */
const longestOvertime = 6 * 60;

/**
 * What is left of a plan at a moment of the night, as a prep of its own: done tasks are gone and leave hours behind for
 * what follows them, running ones go on with their cook and oven for as long as they are now thought to take, and the
 * rest begins at `now` at the earliest. With it the plan's own order, each task as soon as it can from its planned hour
 * on. What a limit asks of food that is done or running can only be met by what comes after it: where it cannot, `allow`
 * says whether the limit gives.
 */
export const restFromPlan = (prep: Prep, plan: Plan, progress: Progress, allow: Allowance = "none"): Rest => {
  const now = moment(Math.ceil(progress.now));
  const anew = madeAnew(prep, progress);
  const present = without(kitchenNow(prep, progress), new Set(progress.skipped ?? []));
  const done = new Map(progress.done.filter((d) => !anew.has(d.task)).map((d) => [d.task, d]));
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const tasks = new Map(present.tasks.map((task) => [task.id, task]));
  const goingOn = runningNow(
    present,
    progress.running.flatMap(({ task: id, start, ends }) => {
      const task = tasks.get(id);
      const place = placed.get(id);
      const begun = task !== undefined && place !== undefined && !done.has(id) && !anew.has(id);
      return begun ? [{ task, place, start, ends }] : [];
    }),
    now,
    progress.away ?? [],
    new Set(done.keys()),
  );
  const started = new Map<TaskId, Begun>([
    ...[...done].map(([id, { start, end }]) => [id, { start, end }] as const),
    ...progress.running.flatMap(({ task, start }) =>
      goingOn.has(task) ? [[task, { start, end: null }] as const] : [],
    ),
  ]);
  const freeHours = new Map<TaskId, Moment>();
  const work = present.tasks
    .filter((task) => !done.has(task.id))
    .map((task): Task => {
      const on = goingOn.get(task.id);
      if (on !== undefined) {
        if (on.place === null) return { ...on.task, starts: { from: now, to: farAway } };
        return pinned(on.task, on.place, now);
      }
      const hours = hoursOf(task, present.lags, started, now, allow !== "none");
      if (hours.free !== null) freeHours.set(task.id, hours.free);
      return { ...task, starts: { from: hours.from, to: hours.to } };
    });
  const freeLags = new Map<number, ReturnType<typeof minutes>>();
  const lags: Lag[] = [];
  for (const lag of present.lags) {
    // What counts from a moment in the past is in the hours of what follows; what has begun waits for nothing any more.
    if (done.has(lag.before) || done.has(lag.after) || goingOn.has(lag.after)) continue;
    if (goingOn.has(lag.before) && lag.beforeEdge === "start") continue;
    const gives =
      lag.most !== null && (allow === "all-waits" || (allow !== "none" && goingOn.has(lag.before)));
    if (gives && lag.most !== null) freeLags.set(lags.length, lag.most);
    lags.push(gives ? { ...lag, most: null } : lag);
  }
  const latest = present.span?.to ?? lastMoment(present);
  const staysOn = allow === "overtime" || allow === "all-waits";
  const crew = staysOn
    ? present.crew.map((cook) => stayingOn(cook, now, progress, busyUntil(goingOn, cook.name, now)))
    : present.crew;
  const rest: Prep = {
    ...present,
    crew,
    tasks: work,
    lags,
    courses: present.courses
      .map((goal) => ({ ...goal, plateTasks: goal.plateTasks.filter((id) => !done.has(id)) }))
      .filter((goal) => goal.plateTasks.length > 0)
      .map((goal) => dueAs(goal, goingOn, now)),
    holds: present.holds.filter((hold) => !done.has(hold.task) && !done.has(hold.plate)),
    ...(present.stays === undefined ? {} : { stays: staysLeft(present.stays, (task) => done.has(task)) }),
    ...(present.sameCook === undefined ? {} : { sameCook: groupsThere(present, progress) }),
    span: { from: now, to: moment(staysOn ? latest + longestOvertime : latest) },
    ovens: settingsAt(present, plan, now).map((oven) => asInUse(oven, goingOn)),
    ovensCold: "once",
  };
  const order = new Map(placed);
  const running = new Set<TaskId>();
  for (const [id, { place }] of goingOn) {
    if (place === null) continue;
    running.add(id);
    order.set(id, place);
  }
  return {
    prep: rest,
    pushed: laidOut(rest, prep, order, running, now, progress).placed,
    asBefore: asBefore(rest, order, now, coursesMoved(prep.courses, progress)),
    free: { lags: freeLags, hours: freeHours },
    crew: present.crew,
    held: [...goingOn].filter(([, { place }]) => place === null).map(([id]) => id),
  };
};

/** Where everything stood, but the plates of courses that are asked for at another time. */
const asBefore = (
  rest: Prep,
  order: ReadonlyMap<TaskId, Placed>,
  now: Moment,
  moved: ReadonlyMap<number, number>,
): readonly Placed[] => {
  const plates = new Map(
    rest.courses.flatMap((goal) => goal.plateTasks.map((id) => [id, goal.course] as const)),
  );
  return rest.tasks.flatMap((task): Placed[] => {
    const place = order.get(task.id);
    if (place === undefined) return [];
    const by = moved.get(plates.get(task.id) ?? -1) ?? 0;
    const start = task.starts?.to === now ? now : place.start + by;
    return [{ ...place, start: moment(start), end: moment(start + wholeLength(task)) }];
  });
};

/** A course of which every plate that is left is being plated lands when they do, though that be sooner than was asked. */
const dueAs = (goal: CourseGoal, goingOn: GoingOn, now: Moment): CourseGoal => {
  const ends = goal.plateTasks.map((id) => {
    const on = goingOn.get(id);
    return on === undefined || on.place === null ? goal.due : now + wholeLength(on.task);
  });
  return { ...goal, due: moment(Math.min(goal.due, Math.max(...ends))) };
};

/** When something began, and ended; null while it goes on. */
type Begun = { readonly start: Moment; readonly end: Moment | null };

/** An oven in which something goes on stands at its heat, whatever the plan had in it by now. */
const asInUse = (oven: Prep["ovens"][number], goingOn: GoingOn): Prep["ovens"][number] => {
  for (const { task, place } of goingOn.values()) {
    const use = place?.oven === oven.id ? task.segments[0]?.uses.find((u) => u.celsius !== null) : undefined;
    if (use !== undefined && use.celsius !== null) return { ...oven, cold: use.celsius };
  }
  return oven;
};

/** Later than any night. */
const farAway = moment(100_000);

/**
 * The work in the plan's own order, in the best of a few ways: each course only its plates later, or what is to be hot on
 * them too, or all of its work.
 */
const laidOut = (
  rest: Prep,
  prep: Prep,
  order: ReadonlyMap<TaskId, Placed>,
  running: ReadonlySet<TaskId>,
  now: Moment,
  progress: Progress,
): Forward => {
  const moved = new Map(coursesMoved(prep.courses, progress));
  for (const goal of rest.courses) {
    // Where the plate that was to be the last is not left any more, the others are not taken to the pass too soon.
    const ends = goal.plateTasks.map((id) => (order.get(id)?.end ?? now) + (moved.get(goal.course) ?? 0));
    const early = goal.due - Math.max(...(goal.landsWith === "first" ? ends.slice(0, 1) : ends));
    if (early > 0) moved.set(goal.course, (moved.get(goal.course) ?? 0) + early);
  }
  const plates = new Map(
    prep.courses.flatMap((goal) => goal.plateTasks.map((id) => [id, goal.course] as const)),
  );
  const hot = new Map(rest.holds.flatMap((hold) => (hold.hot ? [[hold.task, hold.plate] as const] : [])));
  /** Hours that are later by as much as each course is. */
  const hours = (
    by: ReadonlyMap<number, number>,
    which: "plates" | "hot" | "all",
  ): ReadonlyMap<TaskId, number> =>
    new Map(
      rest.tasks.flatMap(({ id, course }): [TaskId, number][] => {
        const own = order.get(id)?.start;
        const of = plates.get(id) ?? (which === "hot" ? plates.get(hot.get(id) ?? "") : undefined);
        const later = by.get(which === "all" ? course : (of ?? -1)) ?? 0;
        return own === undefined || running.has(id) || later <= 0 ? [] : [[id, own + later]];
      }),
    );
  let best: { readonly found: Forward; readonly worth: readonly number[] } | null = null;
  const tried = (notBefore: ReadonlyMap<TaskId, number>): void => {
    for (const planned of [true, false]) {
      const found = forward(rest, order, running, now, notBefore, planned);
      const worth = [found.unplaced.length, found.kept ? 0 : 1, latenessOf(rest, found.placed)];
      const differs = best === null ? 0 : worth.findIndex((value, i) => value !== best?.worth[i]);
      if (best === null || (differs >= 0 && (worth[differs] ?? 0) < (best.worth[differs] ?? 0)))
        best = { found, worth };
      if (worth.every((value) => value === 0)) return;
    }
  };
  const easy = (): boolean => best?.worth.every((value) => value === 0) ?? false;
  for (const which of ["plates", "hot", "all"] as const) if (!easy()) tried(hours(moved, which));
  if (!easy()) {
    const where = new Map<TaskId, number>(
      (best as { found: Forward } | null)?.found.placed.map((p) => [p.task, p.start]) ?? [],
    );
    const late = new Map(moved);
    for (const [id, course] of plates) {
      const own = order.get(id)?.start;
      const start = where.get(id);
      if (own !== undefined && start !== undefined && start - own > (late.get(course) ?? 0))
        late.set(course, start - own);
    }
    for (const which of ["hot", "all"] as const) tried(hours(late, which));
  }
  return (best as { found: Forward } | null)?.found ?? { placed: [], unplaced: [], kept: false };
};

const latenessOf = (prep: Prep, placed: readonly Placed[]): number => {
  const ends = new Map(placed.map((p) => [p.task, p.end as number]));
  return prep.courses.reduce(
    (sum, goal) => sum + Math.max(0, ...goal.plateTasks.map((id) => (ends.get(id) ?? goal.due) - goal.due)),
    0,
  );
};

/** A task that goes on now, with its cook and its oven. */
const pinned = (task: Task, place: Placed, now: Moment): Task => ({
  ...task,
  segments: task.segments.map((segment) => ({
    ...segment,
    uses: segment.uses.map((use) =>
      use.resource === "oven" && place.oven !== null ? { ...use, resource: place.oven } : use,
    ),
  })),
  starts: { from: now, to: now },
  ...(place.cook === null ? {} : { cooks: [place.cook] }),
});

/** Groups of one cook's work, without those whose cook has left: it changes hands. */
const groupsThere = (prep: Prep, { away = [] }: Progress): NonNullable<Prep["sameCook"]> =>
  away.length === 0 ? (prep.sameCook ?? []) : [];

/** When the last work of a cook's running tasks ends. */
const busyUntil = (goingOn: GoingOn, cook: string, now: Moment): number =>
  [...goingOn.values()].reduce(
    (until, { task, place }) => (place?.cook === cook ? Math.max(until, now + handsUntil(task)) : until),
    now as number,
  );

/** A cook who stays after the last shift, or into a break with what runs, unless the cook leaves. */
const stayingOn = (
  cook: Prep["crew"][number],
  now: Moment,
  { away = [] }: Progress,
  busy: number,
): Prep["crew"][number] => {
  const last = cook.shifts.reduce((latest, shift) => Math.max(latest, shift.to), Number.NEGATIVE_INFINITY);
  if (away.some((entry) => entry.cook === cook.name)) return cook;
  const current = cook.shifts.findLast((shift) => shift.from <= now);
  return {
    ...cook,
    shifts: cook.shifts.map((shift) => {
      if (shift.to === last && last > now) return { ...shift, to: moment(shift.to + longestOvertime) };
      return shift === current ? { ...shift, to: moment(Math.max(shift.to, busy)) } : shift;
    }),
  };
};

/** Vessels that are in use since before now, or will be: what was washed up is free, what was filled is taken already. */
const staysLeft = (stays: readonly VesselStay[], isDone: (task: TaskId) => boolean): readonly VesselStay[] =>
  stays
    .filter((stay) => stay.to === null || !isDone(stay.to))
    .map((stay) => (stay.from !== null && isDone(stay.from) ? { ...stay, from: null } : stay));

/** The hours in which a task may begin, by what has begun before it; with the latest start that was let go, if one was. */
const hoursOf = (
  task: Task,
  lags: readonly Lag[],
  started: ReadonlyMap<TaskId, Begun>,
  now: Moment,
  loosely: boolean,
): { readonly from: Moment; readonly to: Moment; readonly free: Moment | null } => {
  const length = wholeLength(task);
  let from: number = Math.max(now, task.starts?.from ?? now);
  const own: number = task.starts?.to ?? farAway;
  const latest: number[] = [];
  for (const lag of lags) {
    const before = lag.after === task.id ? started.get(lag.before) : undefined;
    const edge = lag.beforeEdge === "end" ? before?.end : before?.start;
    if (edge === undefined || edge === null) continue;
    const toStart = lag.afterEdge === "end" ? length : 0;
    from = Math.max(from, Math.ceil(edge + lag.least) - toStart);
    if (lag.most !== null) latest.push(Math.floor(edge + lag.most) - toStart);
  }
  // A limit that has passed does not stand in the way of doing what can still be done.
  const to = loosely ? own : Math.min(own, ...latest.filter((at) => at >= from));
  const free = Math.min(own, ...latest);
  return { from: moment(from), to: moment(Math.max(from, to)), free: free < to ? moment(free) : null };
};

const lastMoment = (prep: Prep): Moment =>
  moment(
    Math.max(
      ...prep.crew.flatMap((cook) => cook.shifts.map((shift) => shift.to as number)),
      ...prep.courses.map((goal) => goal.due as number),
      0,
    ) + 720,
  );
