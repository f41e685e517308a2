import { addEstimates, type Estimate } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Task } from "../model/prep.ts";
import type { DraftLag } from "./draft-lag.ts";

/** One job of cutting that stands alone on the list: what is cut, how, and when it is wanted. */
export type Cut = {
  readonly task: string;
  readonly food: string;
  readonly verbs: string;
  /** Minutes to lay out board and knife, which are saved when two are done in one go. */
  readonly setUp: number;
};

/** The work of several dishes, with the jobs of cutting in it. */
export type SharedWork = { readonly tasks: readonly Task[]; readonly lags: readonly DraftLag[] };

/**
 * Does the same cut of the same food once for all dishes of a day: one board, one laying out. `dayOf` tells on which day
 * a task's course is served, or null for work that is done ahead on its own.
 */
export const shareMise = (
  tasks: readonly Task[],
  lags: readonly DraftLag[],
  cuts: readonly Cut[],
  dayOf: (task: Task) => number | null,
): SharedWork => {
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const groups = new Map<string, Cut[]>();
  for (const cut of cuts) {
    const task = byId.get(cut.task);
    const day = task === undefined ? null : dayOf(task);
    if (task === undefined || day === null) continue;
    const key = `${cut.food}|${cut.verbs}|${day}|${task.version}`;
    groups.set(key, [...(groups.get(key) ?? []), cut]);
  }
  const into = new Map<string, string>();
  const joined = new Map<string, Task>();
  for (const group of groups.values()) {
    const [first, ...others] = group;
    const main = first === undefined ? undefined : byId.get(first.task);
    if (first === undefined || main === undefined || others.length === 0) continue;
    let task = main;
    for (const other of others) {
      const more = byId.get(other.task);
      if (more === undefined || more.dish === main.dish) continue;
      into.set(other.task, main.id);
      task = join(task, more, other.setUp);
    }
    joined.set(main.id, task);
  }
  if (into.size === 0) return { tasks, lags };
  return {
    tasks: tasks.filter((task) => !into.has(task.id)).map((task) => joined.get(task.id) ?? task),
    lags: lags.map((lag) => ({
      ...lag,
      before: into.get(lag.before) ?? lag.before,
      after: into.get(lag.after) ?? lag.after,
    })),
  };
};

const join = (a: Task, b: Task, setUp: number): Task => {
  const [first, ...rest] = a.segments;
  const more = b.segments[0]?.minutes;
  if (first === undefined || more === undefined) return a;
  return {
    ...a,
    // It belongs to whichever course is served first, since that one waits for it.
    course: Math.min(a.course, b.course),
    amount:
      a.amount === null || b.amount === null
        ? (a.amount ?? b.amount)
        : { ...a.amount, value: a.amount.value + b.amount.value },
    segments: [{ ...first, minutes: addEstimates(first.minutes, less(more, setUp)) }, ...rest],
    alsoFor: [...new Set([...(a.alsoFor ?? []), b.dish])],
  };
};

const less = ({ low, likely, high }: Estimate<Minutes>, by: number): Estimate<Minutes> => ({
  low: minutes(Math.max(0, low - by)),
  likely: minutes(Math.max(0, likely - by)),
  high: minutes(Math.max(0, high - by)),
});
