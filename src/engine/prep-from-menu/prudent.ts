import type { Estimate } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Lag, Segment, Task } from "../model/prep.ts";

/**
 * The work with the lengths that a plan should count on. Where a length is known only within a range, work runs over
 * further than it runs short, so the mean of PERT, (low + 4 × likely + high) / 6, stands for the likeliest (Malcolm and
 * others 1959). A wait in the cold or on the bench costs no hands: it is begun so early that its longest still fits, as
 * long as what waits afterwards keeps if it was ready soonest. What a card states in one figure stays as it is, and so
 * does a wait that is over when its least time is.
 */
export const prudent = (
  tasks: readonly Task[],
  lags: readonly Pick<Lag, "before" | "beforeEdge" | "most">[],
  longWaits: boolean,
): readonly Task[] => {
  const keeps = new Map<string, number>();
  for (const { before, beforeEdge, most } of lags)
    if (most !== null && beforeEdge === "end")
      keeps.set(before, Math.min(most, keeps.get(before) ?? Number.POSITIVE_INFINITY));
  return tasks.map((task) => {
    const last = task.segments.length - 1;
    const room = keeps.get(task.id) ?? Number.POSITIVE_INFINITY;
    return {
      ...task,
      segments: task.segments.map((segment, k) => counted(segment, longWaits && k === last ? room : 0)),
    };
  });
};

/** Less than this is within what any list of minutes is, and not told. */
const worthTelling = 5;

/** Waits that are counted at their longest, where that is minutes apart from the usual. */
export const longWaitsOf = (
  tasks: readonly Task[],
): readonly { readonly task: Task; readonly minutes: number; readonly usual: number }[] =>
  tasks.flatMap((task) =>
    task.segments.flatMap(({ minutes: { likely, high }, attention, usual }) =>
      attention === "none" && usual !== undefined && likely === high && high - usual >= worthTelling
        ? [{ task, minutes: Math.ceil(high), usual: Math.ceil(usual) }]
        : [],
    ),
  );

const counted = (segment: Segment, room: number): Segment => {
  const { low, likely, high } = segment.minutes;
  if (high <= low || (segment.attention === "none" && likely === low)) return segment;
  const length = isOpenWait(segment) && high - low <= room ? high : minutes((low + 4 * likely + high) / 6);
  const on: Estimate<Minutes> = { low, likely: length, high };
  return { ...segment, minutes: on, usual: likely };
};

/** Alone and off the heat. */
const isOpenWait = ({ attention, station }: Segment): boolean =>
  attention === "none" &&
  (station === "fridge" || station === "freezer" || station === "bench" || station === "hands");
