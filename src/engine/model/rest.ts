import type { Minutes, Moment } from "../measure/units.ts";
import type { Cause, Placed } from "./plan.ts";
import type { LagReason, Prep, TaskId } from "./prep.ts";

/** How far the work of a plan is, at a moment of the night, and what stands otherwise than it was planned for. */
export type Progress = {
  readonly now: Moment;
  /** Tasks that are done, and when they ended. */
  readonly done: readonly { readonly task: TaskId; readonly start: Moment; readonly end: Moment }[];
  /** Tasks that have begun and go on, and when they are now thought to end. */
  readonly running: readonly { readonly task: TaskId; readonly start: Moment; readonly ends: Moment }[];
  /** Tasks that have not begun, and will take so many minutes longer than planned; absent: none. */
  readonly longer?: readonly { readonly task: TaskId; readonly minutes: Minutes }[];
  /** Tasks that are left out; what follows them waits for what they waited for. Absent: none. */
  readonly skipped?: readonly TaskId[];
  /** Tasks whose food is lost, and is made again with all that led to it. Absent: none. */
  readonly anew?: readonly TaskId[];
  /** Cooks who leave, and when. Absent: nobody. */
  readonly away?: readonly { readonly cook: string; readonly from: Moment }[];
  /** Equipment that is out of use from now on: an oven by its name, or so many of a resource. Absent: none. */
  readonly lost?: readonly { readonly resource: string; readonly amount: number }[];
  /** Courses that are asked for later than planned, or sooner (below 0). Absent: none. */
  readonly asked?: readonly { readonly course: number; readonly minutes: Minutes }[];
};

/** What has been said of a night, before it is worked out from it what is done and what runs. */
export type Told = Omit<Progress, "done" | "running" | "longer"> & {
  /** Tasks that go on longer than planned, or will. */
  readonly late: ReadonlyMap<TaskId, number>;
  readonly notBegun: ReadonlySet<TaskId>;
  /** Tasks that are done, and when they ended; null: not said. */
  readonly done: ReadonlyMap<TaskId, Moment | null>;
};

/**
 * What a limit that is passed bears on: how good the food is; how long meat, fish or egg waits half cooked, hot food stays hot, cold food is kept, or food
 * waits to be cooled, on which safety may hang; or that plates leave together.
 */
export type OverrunKind = "quality" | "part-cooked" | "hot-holding" | "cold-keeping" | "cooling" | "together";

/** A wait that is longer than its limit in what is left of a night. */
export type Overrun = {
  readonly before: TaskId;
  readonly after: TaskId;
  readonly reason: LagReason;
  readonly kind: OverrunKind;
  /** What it may wait, and what it does. */
  readonly limit: Minutes;
  readonly waits: Minutes;
  /** Minutes over its limit. */
  readonly by: Minutes;
};

/** A cook who is needed after the end of the shift. */
export type Overtime = { readonly cook: string; readonly until: Moment; readonly by: Minutes };

/** Why a task can have no place, whatever else is moved. */
export type Stuck = {
  readonly task: TaskId;
  readonly why: "no-oven" | "no-equipment" | "no-cook" | "unknown";
  /** The equipment that is missing; empty for the others. */
  readonly what: string;
};

/**
 * How far the plan of a rest may go beyond what is asked: not at all; what is done or running may wait beyond its limit;
 * cooks may stay on besides; anything may wait beyond its limit besides.
 */
export const allowances = ["none", "begun-waits", "overtime", "all-waits"] as const;
/** One of them. */
export type Allowance = (typeof allowances)[number];

/** What is left of a plan at a moment. */
export type Rest = {
  /** The work that is left: nothing of it begins before now but what is running, which goes on where it is. */
  readonly prep: Prep;
  /** The running and the remaining tasks in the plan's own order, each as soon as what it waits for allows. */
  readonly pushed: readonly Placed[];
  /** They where they stood, but the plates of courses that are asked for at another time: not everything fits there. */
  readonly asBefore: readonly Placed[];
  /** Limits of `prep` that were let go, by the place of their lag, and latest starts, by task. */
  readonly free: {
    readonly lags: ReadonlyMap<number, Minutes>;
    readonly hours: ReadonlyMap<TaskId, Moment>;
  };
  /** The crew before anybody was let stay on. */
  readonly crew: Prep["crew"];
  /** Running tasks that cannot go on at once: what they need is taken, or gone. */
  readonly held: readonly TaskId[];
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
