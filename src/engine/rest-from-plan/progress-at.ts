import { type Moment, minutes, moment } from "../measure/units.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { LagReason, Prep, TaskId } from "../model/prep.ts";
import type { Progress, Told } from "../model/rest.ts";

/** Lags that say nothing about whether a thing is there to go on with. */
const apart: ReadonlySet<LagReason> = new Set(["plate-together", "preheat"]);

type Times = { readonly start: number; readonly end: number };

/**
 * How far a night is, out of what has been said of it: what the plan would have done by now is done, and what it would
 * have running runs. What waited for a task that goes on longer, or for its cook's hands, began so much later, or has not
 * begun.
 */
export const progressAt = (prep: Prep, plan: Plan, told: Told): Progress => {
  const { now, late, notBegun, done, ...others } = told;
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const skipped = new Set(told.skipped ?? []);
  const times = new Map<TaskId, Times>();
  const behind: { readonly placed: Placed; readonly times: Times }[] = [];
  const handsOf = (placed: Placed, by: number): readonly Times[] =>
    (tasks.get(placed.task)?.segments ?? []).flatMap((segment, s) => {
      const from = placed.segments[s] ?? placed.start;
      return segment.attention === "hands"
        ? [{ start: from + by, end: (placed.segments[s + 1] ?? placed.end) + by }]
        : [];
    });
  for (const placed of plan.placed.toSorted((a, b) => a.start - b.start || a.end - b.end)) {
    const id = placed.task;
    if (skipped.has(id)) continue;
    const ended = done.get(id);
    if (ended !== undefined) {
      const end = ended ?? Math.min(now, placed.end);
      times.set(id, { start: Math.min(placed.start, end), end });
      continue;
    }
    let start: number = notBegun.has(id) ? Number.POSITIVE_INFINITY : placed.start;
    if (start >= now) {
      times.set(id, { start: Number.POSITIVE_INFINITY, end: Number.POSITIVE_INFINITY });
      continue;
    }
    for (const lag of prep.lags) {
      const before = lag.after === id && !apart.has(lag.reason) ? times.get(lag.before) : undefined;
      const was = before === undefined ? undefined : plan.placed.find((p) => p.task === lag.before);
      if (before === undefined || was === undefined) continue;
      const more = (lag.beforeEdge === "end" ? before.end - was.end : before.start - was.start) || 0;
      if (more <= 0) continue;
      const edge = lag.beforeEdge === "end" ? before.end : before.start;
      start = Math.max(start, edge + lag.least - (lag.afterEdge === "end" ? placed.end - placed.start : 0));
    }
    // Hands that are still busy with something that goes on longer do not begin the next thing.
    const first = handsOf(placed, 0)[0];
    for (const other of behind) {
      if (first === undefined || other.placed.cook !== placed.cook) continue;
      const busy = handsOf(other.placed, other.times.start - other.placed.start).at(-1);
      if (busy === undefined) continue;
      const until =
        busy.end + (other.times.end - other.times.start) - (other.placed.end - other.placed.start);
      if (busy.start <= start + (first.start - placed.start) && until > first.start)
        start = Math.max(start, until - (first.start - placed.start));
    }
    const own: Times = { start, end: start + (placed.end - placed.start) + (late.get(id) ?? 0) };
    times.set(id, own);
    if (Number.isFinite(start) && own.end > placed.end) behind.push({ placed, times: own });
  }
  const known = [...times].map(([task, at]) => ({ task, ...at }));
  const finished = known.filter(({ task, end }) => done.has(task) || end <= now);
  const running = known.filter(({ task, start, end }) => !done.has(task) && start < now && end > now);
  const begun = new Set([...finished, ...running].map(({ task }) => task));
  const at = (value: number): Moment => moment(Math.ceil(value));
  return {
    ...others,
    now,
    done: finished.map(({ task, start, end }) => ({ task, start: at(start), end: at(end) })),
    running: running.map(({ task, start, end }) => ({ task, start: at(start), ends: at(end) })),
    longer: [...late].flatMap(([task, more]) => (begun.has(task) ? [] : [{ task, minutes: minutes(more) }])),
  };
};
