import { moment } from "../measure/units.ts";
import type { Placed } from "../model/plan.ts";
import type { Lag, Prep, Task, TaskId } from "../model/prep.ts";
import { overVessels } from "./over-vessels.ts";
import {
  emptyTaken,
  freeFrom,
  type Rules,
  rulesOf,
  type Stand,
  type Taken,
  take,
  wholeLength,
} from "./taken.ts";

/** Passes over the work before what is still broken is left to be told. */
const mostPasses = 40;
/** Steps from one thing in the way to the next, for one task. */
const mostSteps = 400;

/** The work that is left in the plan's own order, each task as soon as everything lets it, from its planned hour on. */
export type Forward = {
  readonly placed: readonly Placed[];
  /** Tasks for which no cook, oven or equipment is left at any hour. */
  readonly unplaced: readonly TaskId[];
  /** True when every limit between them is kept. */
  readonly kept: boolean;
};

/**
 * Places the work from now on, whatever comes: what does not fit at its hour comes later, with all that waits for it, and
 * what may not wait so long for it is begun later too. Tasks in `running` go on now, where they are.
 */
export const forward = (
  prep: Prep,
  planned: ReadonlyMap<TaskId, Placed>,
  running: ReadonlySet<TaskId>,
  now: number,
  notBefore: ReadonlyMap<TaskId, number>,
  /** In the order of the plan; otherwise what was let later makes way for what was planned after it. */
  asPlanned: boolean,
): Forward => {
  const rules = rulesOf(prep);
  const tasks = inOrder(prep.tasks, planned, running);
  const lagsInto = new Map<TaskId, Lag[]>();
  for (const lag of prep.lags) lagsInto.set(lag.after, [...(lagsInto.get(lag.after) ?? []), lag]);
  const lengths = new Map(prep.tasks.map((task) => [task.id, wholeLength(task)]));
  const release = new Map<TaskId, number>(
    tasks.map((task) => [
      task.id,
      Math.max(
        now,
        planned.get(task.id)?.start ?? now,
        task.starts?.from ?? now,
        notBefore.get(task.id) ?? now,
      ),
    ]),
  );
  const groups = new Map<TaskId, number>(
    (prep.sameCook ?? []).flatMap((group, g) => group.map((id) => [id, g] as const)),
  );
  let placed = new Map<TaskId, Placed>();
  for (let pass = 0; pass < mostPasses; pass += 1) {
    placed = new Map();
    const taken = emptyTaken();
    const groupCook = new Map<number, string>();
    for (const task of asPlanned ? tasks : byRelease(tasks, lagsInto, lengths, release, running)) {
      const from = Math.max(
        release.get(task.id) ?? now,
        afterOthers(task, lagsInto.get(task.id) ?? [], placed, lengths),
      );
      const group = groups.get(task.id);
      const cook = group === undefined ? null : (groupCook.get(group) ?? null);
      const spot = running.has(task.id)
        ? { start: now, stand: standOf(planned.get(task.id)) }
        : earliest(rules, taken, task, planned.get(task.id), from, cook);
      if (spot === null) continue;
      take(rules, taken, task, spot.stand, spot.start);
      if (group !== undefined && spot.stand.cook !== null) groupCook.set(group, spot.stand.cook);
      placed.set(task.id, laid(task, spot.stand, spot.start));
    }
    if (!raised(prep, placed, running, release)) break;
  }
  const after = [...placed.values()];
  return {
    placed: after,
    unplaced: prep.tasks.filter((task) => !placed.has(task.id)).map((task) => task.id),
    kept: !raised(prep, placed, running, new Map(release)),
  };
};

/** Running work first, then in the order of the plan; what it does not place comes last, after what it waits for. */
const inOrder = (
  tasks: readonly Task[],
  planned: ReadonlyMap<TaskId, Placed>,
  running: ReadonlySet<TaskId>,
): readonly Task[] => {
  const hour = (task: Task): number =>
    running.has(task.id)
      ? Number.NEGATIVE_INFINITY
      : (planned.get(task.id)?.start ?? Number.MAX_SAFE_INTEGER);
  const end = (task: Task): number => planned.get(task.id)?.end ?? Number.MAX_SAFE_INTEGER;
  return tasks.toSorted((a, b) => hour(a) - hour(b) || end(a) - end(b));
};

/**
 * The tasks by when they may begin at the soonest, as far as that is known: what was let later makes way for what was
 * planned after it. The list is in the order of the plan, so that one pass over it is mostly enough.
 */
const byRelease = (
  tasks: readonly Task[],
  lagsInto: ReadonlyMap<TaskId, readonly Lag[]>,
  lengths: ReadonlyMap<TaskId, number>,
  release: ReadonlyMap<TaskId, number>,
  running: ReadonlySet<TaskId>,
): readonly Task[] => {
  const soonest = new Map(release);
  for (const { id } of tasks) {
    const own = lengths.get(id) ?? 0;
    let from = soonest.get(id) ?? 0;
    for (const lag of lagsInto.get(id) ?? []) {
      const before = soonest.get(lag.before);
      if (before === undefined) continue;
      const edge = before + (lag.beforeEdge === "end" ? (lengths.get(lag.before) ?? 0) : 0);
      from = Math.max(from, edge + lag.least - (lag.afterEdge === "end" ? own : 0));
    }
    soonest.set(id, from);
  }
  const hour = (task: Task): number =>
    running.has(task.id) ? Number.NEGATIVE_INFINITY : (soonest.get(task.id) ?? 0);
  return tasks.toSorted((a, b) => hour(a) - hour(b));
};

const standOf = (placed: Placed | undefined): Stand => ({
  cook: placed?.cook ?? null,
  oven: placed?.oven ?? null,
});

/** When the least waits after what is placed already let a task begin. */
const afterOthers = (
  task: Task,
  lags: readonly Lag[],
  placed: ReadonlyMap<TaskId, Placed>,
  lengths: ReadonlyMap<TaskId, number>,
): number => {
  let from = Number.NEGATIVE_INFINITY;
  for (const lag of lags) {
    const before = placed.get(lag.before);
    if (before === undefined) continue;
    const own = lag.afterEdge === "end" ? (lengths.get(task.id) ?? 0) : 0;
    from = Math.max(from, Math.ceil(before[lag.beforeEdge] + lag.least) - own);
  }
  return from;
};

type Spot = { readonly start: number; readonly stand: Stand };

/** The cook and the oven of the plan where they are still there; else whoever and whichever can begin first. */
const earliest = (
  rules: Rules,
  taken: Taken,
  task: Task,
  before: Placed | undefined,
  from: number,
  sameCook: string | null,
): Spot | null => {
  const attended = task.segments.some(
    (segment) => segment.attention !== "none" && segment.minutes.likely > 0,
  );
  const names = task.segments.flatMap((segment) =>
    segment.uses
      .filter((use) => use.resource === "oven" || rules.shelves.has(use.resource))
      .map((use) => use.resource),
  );
  const named = names.find((name) => name !== "oven");
  const knows = (cook: string): boolean =>
    (task.cooks === undefined || task.cooks.includes(cook)) && (sameCook === null || cook === sameCook);
  const cooks: readonly (string | null)[] = attended
    ? firstOf([...rules.shifts.keys()].filter(knows), before?.cook ?? null)
    : [null];
  const ovens: readonly (string | null)[] =
    names.length === 0
      ? [null]
      : firstOf(named === undefined ? [...rules.shelves.keys()] : [named], before?.oven ?? null);
  const last = Math.min(
    task.starts?.to ?? Number.POSITIVE_INFINITY,
    (rules.prep.span?.to ?? Number.POSITIVE_INFINITY) - wholeLength(task),
  );
  let best: Spot | null = null;
  for (const cook of cooks)
    for (const oven of ovens) {
      // The plan's own cook and oven are kept, where that costs little.
      const most = Math.min(last, best === null ? last : best.start - 1 - worthAChange);
      const start = searched(rules, taken, task, { cook, oven }, from, most);
      if (start !== null) best = { start, stand: { cook, oven } };
    }
  return best;
};

/** Minutes by which another cook or oven must be sooner for a task to change hands. Common practice, no source. */
const worthAChange = 4;

const firstOf = (names: readonly string[], first: string | null): readonly string[] =>
  first !== null && names.includes(first) ? [first, ...names.filter((name) => name !== first)] : names;

const searched = (
  rules: Rules,
  taken: Taken,
  task: Task,
  stand: Stand,
  from: number,
  last: number,
): number | null => {
  let at = from;
  for (let step = 0; step < mostSteps && at <= last; step += 1) {
    const next = freeFrom(rules, taken, task, stand, at);
    if (next === at) return at;
    at = Math.ceil(next);
  }
  return null;
};

const laid = (task: Task, stand: Stand, start: number): Placed => {
  let at = start;
  const segments = task.segments.map((segment) => {
    const own = moment(at);
    at += Math.max(0, Math.ceil(segment.minutes.likely));
    return own;
  });
  return { task: task.id, start: moment(start), end: moment(at), segments, ...stand, because: [] };
};

/** Lets later what stands too soon after something, or too long before it; false when nothing does, or it is running. */
const raised = (
  prep: Prep,
  placed: ReadonlyMap<TaskId, Placed>,
  running: ReadonlySet<TaskId>,
  release: Map<TaskId, number>,
): boolean => {
  let any = false;
  const raise = (task: TaskId, to: number): void => {
    if (running.has(task) || to <= (release.get(task) ?? Number.NEGATIVE_INFINITY)) return;
    release.set(task, to);
    any = true;
  };
  for (const lag of prep.lags) {
    const before = placed.get(lag.before);
    const after = placed.get(lag.after);
    if (before === undefined || after === undefined) continue;
    const gap = after[lag.afterEdge] - before[lag.beforeEdge];
    if (gap < lag.least) raise(lag.after, Math.ceil(after.start + lag.least - gap));
    if (lag.most !== null && gap > lag.most) raise(lag.before, Math.ceil(before.start + gap - lag.most));
  }
  for (const { task, until } of overVessels(prep, placed)) raise(task, until);
  return any;
};
