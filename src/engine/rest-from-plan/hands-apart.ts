import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Segment, Task } from "../model/prep.ts";

/** More delays than running tasks could ever want of each other. */
const mostDelays = 200;

type Work = { readonly task: number; readonly segment: number; readonly from: number; readonly to: number };

/**
 * Running tasks of one cook, all from now on, so that no two ask for the hands at once: what comes later waits, and what
 * stands before it in its own task stands so much longer. Where both ask at once from the first minute, they are left as
 * they are.
 */
export const handsApart = (running: readonly Task[]): readonly Task[] => {
  const tasks = running.map((task) => [...task.segments]);
  for (let i = 0; i < mostDelays; i += 1) {
    const clash = firstClash(tasks);
    if (clash === null) break;
    const before = tasks[clash.later.task]?.[clash.later.segment - 1];
    if (before === undefined) break;
    const longer = lengthOf(before) + clash.first.to - clash.later.from;
    tasks[clash.later.task]?.splice(clash.later.segment - 1, 1, {
      ...before,
      minutes: exactly(minutes(longer)),
    });
  }
  return running.map((task, t) => ({ ...task, segments: tasks[t] ?? task.segments }));
};

const lengthOf = (segment: Segment): number => Math.max(0, Math.ceil(segment.minutes.likely));

/** The first two stretches of hands that overlap; the one that can wait is the later. */
const firstClash = (
  tasks: readonly (readonly Segment[])[],
): { readonly first: Work; readonly later: Work } | null => {
  const hands = tasks.flatMap((segments, task) => {
    let at = 0;
    return segments.flatMap((segment, s): Work[] => {
      const from = at;
      at += lengthOf(segment);
      return segment.attention === "hands" && at > from ? [{ task, segment: s, from, to: at }] : [];
    });
  });
  hands.sort((a, b) => a.from - b.from || a.segment - b.segment || a.task - b.task);
  for (const [i, first] of hands.entries()) {
    const later = hands.slice(i + 1).find((other) => other.task !== first.task && other.from < first.to);
    if (later !== undefined) return { first, later };
  }
  return null;
};
