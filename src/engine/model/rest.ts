import type { Minutes, Moment } from "../measure/units.ts";
import type { Cause, Placed } from "./plan.ts";
import type { LagReason, Prep, TaskId } from "./prep.ts";

/** How far the work of a plan is, at a moment of the night. */
export type Progress = {
  readonly now: Moment;
  /** Tasks that are done, and when they ended. */
  readonly done: readonly { readonly task: TaskId; readonly start: Moment; readonly end: Moment }[];
  /** Tasks that have begun and go on, and when they are now thought to end. */
  readonly running: readonly { readonly task: TaskId; readonly start: Moment; readonly ends: Moment }[];
};

/** A greatest lag that what has happened already breaks, whatever is done now: what waits has waited too long. */
export type Overrun = {
  readonly before: TaskId;
  readonly after: TaskId;
  readonly reason: LagReason;
  /** Minutes over its limit if it were begun at once. */
  readonly by: Minutes;
};

/** What is left of a plan at a moment. */
export type Rest = {
  /** The work that is left: nothing of it begins before now but what is running, which goes on where it is. */
  readonly prep: Prep;
  /** The running and the remaining tasks in the plan's own order, each as soon as what it waits for allows. */
  readonly pushed: readonly Placed[];
  readonly overruns: readonly Overrun[];
};

/** How a task stands otherwise than in the plan before. */
export type Moved = {
  readonly task: TaskId;
  /** Null when it has no place now, or had none before. */
  readonly before: Pick<Placed, "start" | "cook" | "oven"> | null;
  readonly after: Pick<Placed, "start" | "cook" | "oven"> | null;
  /** What pins it now. */
  readonly because: readonly Cause[];
};
