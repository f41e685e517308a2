import type { Plan, Violation } from "../model/plan.ts";
import type { Lag, Prep, TaskId } from "../model/prep.ts";
import type { Overrun, Progress } from "../model/rest.ts";
import { violation } from "./violation.ts";

type Times = { readonly start: number; readonly end: number };

/**
 * Proves the plan of what is left of a night against the whole of the work: nothing is lost, what has begun is left as it
 * is, and every wait is long enough; one that is longer than its limit is told, with its figures, and nothing else is.
 * The limits of the rest itself may have been let go, so they are not looked at here.
 */
export const checkNight = (
  whole: Prep,
  progress: Progress,
  night: { readonly plan: Plan; readonly overruns: readonly Overrun[] },
): readonly Violation[] => {
  const { plan, overruns } = night;
  const now = Math.ceil(progress.now);
  const skipped = new Set(progress.skipped ?? []);
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const done = new Map(progress.done.map((d) => [d.task, d]));
  const running = new Map(progress.running.map((r) => [r.task, r]));
  const found: Violation[] = [];
  const times = new Map<TaskId, Times>();
  const begun = new Set<TaskId>();
  for (const { id } of whole.tasks) {
    const here = placed.get(id);
    const was = done.get(id);
    const run = running.get(id);
    if (skipped.has(id)) {
      if (here !== undefined) found.push(violation("missing-task", [id], here.start, "left out"));
    } else if (here !== undefined) {
      if (here.start < now) found.push(violation("outside-span", [id], here.start, `before ${now}`));
      const goesOn = run !== undefined && !isAnew(progress, id) && was === undefined;
      times.set(id, goesOn ? { start: run.start, end: here.end } : here);
      if (goesOn) begun.add(id);
    } else if (was !== undefined) {
      times.set(id, was);
      begun.add(id);
    } else if (!plan.unplaced.includes(id))
      found.push(violation("missing-task", [id], now, "neither done nor left"));
  }
  // What is made again has not been done, and so is in the plan.
  for (const id of progress.anew ?? [])
    if (done.has(id) && !placed.has(id) && !plan.unplaced.includes(id))
      found.push(violation("missing-task", [id], now, "to be made again"));
  const told = new Map(overruns.map((o) => [keyOf(o.before, o.after, o.reason), o]));
  const passed = new Map<string, { readonly waits: number; readonly limit: number }[]>();
  for (const lag of whole.lags) {
    const before = times.get(lag.before);
    const after = times.get(lag.after);
    if (before === undefined || after === undefined) continue;
    const gap = after[lag.afterEdge] - before[lag.beforeEdge];
    if (gap < lag.least && !begun.has(lag.after))
      found.push(
        violation("lag", [lag.before, lag.after], after.start, `${lag.reason} ${gap} < ${lag.least}`),
      );
    for (const wait of waitsOf(lag, gap, begun)) {
      const { key, waits, limit } = wait;
      passed.set(key, [...(passed.get(key) ?? []), { waits, limit }]);
      if (!told.has(key))
        found.push(
          violation("untold-wait", [lag.before, lag.after], after.start, `${lag.reason} ${waits} > ${limit}`),
        );
    }
  }
  for (const [key, { before, after, waits, limit, by }] of told) {
    const real = (passed.get(key) ?? []).some((p) => p.waits === waits && p.limit === limit);
    if (!real || by !== Math.ceil(waits - limit))
      found.push(violation("untold-wait", [before, after], now, `told ${waits} for ${limit}`));
  }
  return found;
};

const isAnew = ({ anew = [] }: Progress, id: TaskId): boolean => anew.includes(id);

const keyOf = (before: TaskId, after: TaskId, reason: Lag["reason"]): string =>
  `${before}\n${after}\n${reason}`;

/** The side of a lag that is passed by work that has not begun. */
const waitsOf = (
  lag: Lag,
  gap: number,
  begun: ReadonlySet<TaskId>,
): readonly { readonly key: string; readonly waits: number; readonly limit: number }[] => {
  if (lag.reason === "plate-together" && begun.has(lag.after) && !begun.has(lag.before))
    return gap < lag.least
      ? [{ key: keyOf(lag.after, lag.before, lag.reason), waits: -gap, limit: -lag.least }]
      : [];
  if (lag.most === null || gap <= lag.most || begun.has(lag.after)) return [];
  return [{ key: keyOf(lag.before, lag.after, lag.reason), waits: gap, limit: lag.most }];
};
