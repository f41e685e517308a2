import type { Segment, Task } from "../model/prep.ts";

/** A segment of a placed task, in the order in which the plan starts them. */
export type Stage = {
  readonly task: Task;
  readonly segment: Segment;
  /** Place in the task, from 0. */
  readonly place: number;
  /** The planned start of the segment. */
  readonly planned: number;
  readonly plannedEnd: number;
  readonly cook: string | null;
  readonly oven: string | null;
};
