import type { Estimate } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Segment, Task } from "../model/prep.ts";

/**
 * The work with the lengths that a plan should count on: where a length is known only within a range, work runs over further
 * than it runs short, so the mean of PERT, (low + 4 × likely + high) / 6, stands for the likeliest (Malcolm and others
 * 1959). What a card states in one figure stays as it is, and so does a wait that is over when its least time is.
 */
export const prudent = (task: Task): Task => ({ ...task, segments: task.segments.map(counted) });

const counted = (segment: Segment): Segment => {
  const { low, likely, high } = segment.minutes;
  if (high <= low || (segment.attention === "none" && likely === low)) return segment;
  const mean: Estimate<Minutes> = { low, likely: minutes((low + 4 * likely + high) / 6), high };
  return { ...segment, minutes: mean };
};
