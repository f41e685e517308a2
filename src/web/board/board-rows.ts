import type { Placed, Plan, Progress, TaskId } from "#engine/index.ts";

/** How a task stands on the board. */
export type Standing = "running" | "over" | "next" | "later" | "done" | "skipped";

/** A task on the board, with when it is to begin and end as things now are. */
export type BoardRow = {
  readonly placed: Placed;
  readonly standing: Standing;
  readonly start: number;
  readonly end: number;
};

/** Work that begins within so many minutes stands under "Next". */
export const soon = 30;

/** The tasks of a night in the order in which they begin, with how each stands at a moment. */
export const boardRows = (plan: Plan, progress: Progress): readonly BoardRow[] => {
  const done = new Map(progress.done.map((entry) => [entry.task, entry]));
  const running = new Map(progress.running.map((entry) => [entry.task, entry]));
  const longer = new Map((progress.longer ?? []).map((entry) => [entry.task, entry.minutes as number]));
  const skipped = new Set<TaskId>(progress.skipped ?? []);
  return plan.placed
    .map((placed): BoardRow => {
      const ended = done.get(placed.task);
      if (skipped.has(placed.task))
        return { placed, standing: "skipped", start: placed.start, end: placed.end };
      if (ended !== undefined) return { placed, standing: "done", start: ended.start, end: ended.end };
      const run = running.get(placed.task);
      if (run !== undefined) {
        const standing = run.ends > placed.end ? "over" : "running";
        return { placed, standing, start: run.start, end: run.ends };
      }
      const end = placed.end + (longer.get(placed.task) ?? 0);
      return {
        placed,
        standing: placed.start <= progress.now + soon ? "next" : "later",
        start: placed.start,
        end,
      };
    })
    .sort((a, b) => a.start - b.start || a.end - b.end);
};
