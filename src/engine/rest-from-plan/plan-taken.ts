import { moment } from "../measure/units.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { Progress } from "../model/rest.ts";

/**
 * The plan of a whole night once the plan of its rest is taken: what is done and what runs stands where it was begun, and
 * all else as it was planned anew. The night goes on from it, and can be planned anew again.
 */
export const planTaken = (before: Plan, rest: Plan, progress: Progress): Plan => {
  const fresh = new Map(rest.placed.map((placed) => [placed.task, placed]));
  const done = new Map(progress.done.map((entry) => [entry.task, entry]));
  const running = new Map(progress.running.map((entry) => [entry.task, entry]));
  const skipped = new Set(progress.skipped ?? []);
  const placed = before.placed.flatMap((was): readonly Placed[] => {
    if (skipped.has(was.task)) return [];
    const is = fresh.get(was.task);
    const ended = done.get(was.task);
    if (is === undefined) return ended === undefined ? [] : [{ ...was, start: ended.start, end: ended.end }];
    const run = running.get(was.task);
    // What is made again, or could not go on at once, begins anew.
    if (run === undefined || is.start > progress.now) return [is];
    const by = run.start - was.start;
    const segments = was.segments.map((at) => moment(at + by));
    return [{ ...is, start: run.start, segments }];
  });
  const known = new Set(placed.map((p) => p.task));
  const added = rest.placed.filter((p) => !known.has(p.task));
  return {
    ...rest,
    placed: [...placed, ...added].toSorted((a, b) => a.start - b.start || a.end - b.end),
  };
};
