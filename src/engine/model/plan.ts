import type { Minutes, Moment } from "../measure/units.ts";
import type { Clash, WayOut } from "./clash.ts";
import type { GoalLevel, LagReason, TaskId } from "./prep.ts";

/** Set when it keeps a task from standing earlier, which is asked of late courses; absent: from standing later. */
type Way = { readonly earlier?: true };

/** What pins a task where it stands: without it, it could stand a minute later. */
export type Cause =
  | (Way & {
      readonly kind: "lag";
      readonly task: TaskId;
      readonly reason: LagReason;
      /** The side of the lag that is reached, and its minutes. */
      readonly side: "least" | "most";
      readonly minutes: Minutes;
    })
  | (Way & { readonly kind: "cook"; readonly task: TaskId; readonly cook: string })
  | (Way & {
      readonly kind: "resource";
      readonly task: TaskId;
      readonly resource: string;
      /** When the other task ends a stay: then the vessel is clean and free. */
      readonly freeAt?: Moment;
    })
  | (Way & {
      readonly kind: "oven";
      readonly task: TaskId;
      readonly oven: string;
      readonly changeMinutes: Minutes;
    })
  | (Way & { readonly kind: "shift"; readonly cook: string; readonly at: Moment })
  /** Heat is on, and from this moment on (or until it) nobody is in the kitchen. */
  | (Way & { readonly kind: "open"; readonly at: Moment })
  /** It is asked to begin there. */
  | (Way & { readonly kind: "fixed" })
  | { readonly kind: "due"; readonly course: number; readonly at: Moment }
  /** Done before this moment so that the last hour and the service are left to finishing. */
  | { readonly kind: "calm"; readonly at: Moment }
  /** Later, the plan would be worse in this: nothing else holds it. */
  | { readonly kind: "level"; readonly level: GoalLevel }
  /** Done in an earlier shift, since the cook's later one, which ends at this moment, is as full as is comfortable. */
  | { readonly kind: "spread"; readonly cook: string; readonly at: Moment }
  /** Nothing holds it: it could stand so much later. */
  | { readonly kind: "slack"; readonly minutes: Minutes };

/** A task with its times and its hands. Moments are minutes from midnight at the start of the date, end excluded. */
export type Placed = {
  readonly task: TaskId;
  readonly start: Moment;
  readonly end: Moment;
  /** Start of each segment, in order. */
  readonly segments: readonly Moment[];
  /** The cook of its attended segments; null when it needs nobody. */
  readonly cook: string | null;
  /** The oven of its oven segments; null when it uses none. */
  readonly oven: string | null;
  /** How it is done, of a task with several ways: 0 (so it is when absent) as its segments say, n as the n-th of its ways. */
  readonly way?: number;
  /** What keeps it from standing later (or, for a late course, earlier); never empty. */
  readonly because: readonly Cause[];
};

/** When a course is due and when its last plate is there. */
export type CourseLanding = {
  readonly course: number;
  readonly name: string;
  readonly due: Moment;
  readonly lands: Moment;
  readonly lateMinutes: Minutes;
  /** False when a plate of it, or work that goes into one, found no place: then it does not land, whatever the rest of it does. */
  readonly whole: boolean;
  /** The first task that belongs to it. */
  readonly firstTask: TaskId | null;
  readonly firstStart: Moment | null;
};

/** A rule that a plan breaks, as the independent checker found it. */
export type Violation = {
  readonly rule:
    | "segment-gap"
    | "lag"
    | "cook-overloaded"
    | "outside-shift"
    | "no-cook"
    | "resource-over"
    | "vessel-over"
    | "oven-clash"
    | "oven-over"
    | "missing-task"
    | "lands-early"
    | "wrong-lateness"
    | "outside-span"
    | "unskilled"
    | "two-cooks"
    | "untold-wait"
    | "wrong-value";
  readonly tasks: readonly TaskId[];
  readonly at: Moment;
  readonly detail: string;
};

/** A level that plans are compared by, and what was proved about it. */
export type LevelValue = {
  readonly level: GoalLevel;
  readonly value: number;
  /** No plan that is as good in the levels before can have less. */
  readonly bound: number;
  /** True when the value is the bound, and every level before is proved. */
  readonly proved: boolean;
};

/** Every task in its place, or said to have none. */
export type Plan = {
  readonly placed: readonly Placed[];
  readonly courses: readonly CourseLanding[];
  /** Tasks that found no place; then the plan is not whole. */
  readonly unplaced: readonly TaskId[];
  /** Set when it was proved that no plan is whole. */
  readonly impossible?: true;
  readonly status: "on-time" | "late" | "partial";
  /** Lateness, weighted holding, calm; compared in this order. */
  readonly objective: {
    readonly lateMinutes: Minutes;
    readonly holdMinutes: Minutes;
    readonly calmMinutes: Minutes;
    /** Every level, in the order in which they are compared; nothing is claimed of a plan with tasks left out. */
    readonly levels: readonly LevelValue[];
  };
  /** Hands-on minutes a cook. */
  readonly load: readonly { readonly cook: string; readonly handsMinutes: Minutes }[];
  /** What the independent checker found; empty when the plan holds. */
  readonly violations: readonly Violation[];
  /** Why something has no place, or a course cannot land on time, as far as that was proved; absent: not looked for. */
  readonly clashes?: readonly Clash[];
  /** Changes that were tried and help, the one that helps most first; absent: not looked for. */
  readonly waysOut?: readonly WayOut[];
};
