import type { Count, Minutes, Moment, Share } from "../measure/units.ts";
import type { TaskId } from "./prep.ts";

/** How a course fares over many nights that are run with lengths of work drawn by chance. */
export type CourseRisk = {
  /** Place in sitting.courses. */
  readonly course: number;
  readonly name: string;
  readonly due: Moment;
  /** Share of the nights on which its last plate is there no more than five minutes late. */
  readonly withinFive: Share;
  /** Mean lateness over all nights. */
  readonly expectedLate: Minutes;
  /** On nine nights of ten it is no later than this. */
  readonly nineInTen: Minutes;
};

/** A task that makes courses late. */
export type WatchedTask = {
  readonly task: TaskId;
  /** Mean minutes by which its running over makes courses later, all courses and nights taken together. */
  readonly brings: Minutes;
  /** Share of the nights on which it stands on the chain that makes a course late. */
  readonly share: Share;
};

/** How sure a plan is. A course that the plan does not land whole is not in it. */
export type Risk = {
  readonly runs: Count;
  readonly courses: readonly CourseRisk[];
  /** The tasks that matter most, the worst first; at most five. */
  readonly watch: readonly WatchedTask[];
  /** The same nights if all work but the plating began so much sooner. */
  readonly spare: { readonly minutes: Minutes; readonly courses: readonly CourseRisk[] };
};
