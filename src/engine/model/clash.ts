import type { Count, Minutes, Moment } from "../measure/units.ts";
import type { LagReason, TaskId } from "./prep.ts";

/** One thing that is asked of a plan, and that could be asked differently. */
export type ClashDemand =
  /** One side of a lag: it takes at least so long, or may take at most so long. */
  | {
      readonly kind: "lag";
      /** Place in prep.lags. */
      readonly lag: number;
      readonly side: "least" | "most";
      readonly before: TaskId;
      readonly after: TaskId;
      readonly minutes: Minutes;
      readonly reason: LagReason;
    }
  /** The hours of a cook. */
  | { readonly kind: "shift"; readonly cook: string }
  /** The one pair of hands that a cook has. */
  | { readonly kind: "hands"; readonly cook: string }
  /** Somebody is in the kitchen while heat is on. */
  | { readonly kind: "open" }
  | { readonly kind: "resource"; readonly resource: string; readonly capacity: number }
  | { readonly kind: "shelves"; readonly oven: string; readonly shelves: Count }
  /** An oven has one temperature at a time, and takes time to change it. */
  | { readonly kind: "oven-heat" }
  /** A course lands not after (`most`) or not before (`least`) this moment. */
  | { readonly kind: "due"; readonly course: number; readonly side: "least" | "most"; readonly at: Moment };

/** Demands that cannot all be met; without any one of them the tasks named could be done. */
export type Clash = {
  /** The course that cannot land on time; null when something cannot be done at all, however late. */
  readonly lateCourse: number | null;
  readonly demands: readonly ClashDemand[];
  /** The tasks that they are asked of; without any one of them the rest could be done. */
  readonly tasks: readonly TaskId[];
  /** False when some test was given up, so that perhaps a part of it clashes already. */
  readonly smallest: boolean;
  /**
   * For each demand on a lag, the fewest minutes by which it must change, alone, for all of the work to be possible;
   * null where that does not help, is not known, or is a limit of food safety.
   */
  readonly leastChange: readonly (Minutes | null)[];
};

/** One thing done differently. */
export type Easing =
  /** Something may wait longer, or must wait less. */
  | {
      readonly kind: "lag";
      readonly lag: number;
      readonly side: "least" | "most";
      readonly before: TaskId;
      readonly after: TaskId;
      readonly was: Minutes;
      readonly minutes: Minutes;
    }
  /** So many more burners, litres or machines. */
  | { readonly kind: "resource"; readonly resource: string; readonly more: number }
  /** One oven more, with so many shelves. */
  | { readonly kind: "oven"; readonly shelves: Count }
  /** Another pair of hands. */
  | { readonly kind: "hands"; readonly from: Moment; readonly to: Moment }
  /** A cook comes earlier (`from`) or stays later (`to`); `shift` is the place in their shifts. */
  | {
      readonly kind: "shift";
      readonly cook: string;
      readonly shift: number;
      readonly end: "from" | "to";
      readonly was: Moment;
      readonly at: Moment;
    }
  /** A cook works the day before as well. */
  | { readonly kind: "day-before"; readonly cook: string; readonly from: Moment; readonly to: Moment }
  /** A course is due later (or, for fewer than none, earlier). */
  | { readonly kind: "course"; readonly course: number; readonly minutes: Minutes };

/** A change that was tried, and what the plan is with it. */
export type WayOut = {
  readonly change: Easing;
  /** Place in the plan's clashes; null when it was tried without one. */
  readonly clash: number | null;
  /** True when it was shown that one minute, or one unit, less does not do. */
  readonly least: boolean;
  readonly after: {
    readonly status: "on-time" | "late" | "partial";
    readonly unplaced: number;
    readonly lateMinutes: Minutes;
    /** Work that is then done in the hours or by the hands that were added. */
    readonly tasks: readonly TaskId[];
  };
};
