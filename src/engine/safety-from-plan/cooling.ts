import { limitsFor } from "../larder/limits.ts";
import type { LimitCase } from "../model/limit.ts";
import { type Note, type Pointed, pointAt } from "./pointed.ts";
import { between, heatBefore, isCold, type Timed, type Timeline } from "./timeline.ts";

/**
 * What was hot and goes into the cold: the minutes between the end of the heat and the fridge, against the shortest
 * limit of the region. They are minutes before the fridge; how fast the middle cools there, only a probe can say.
 */
export const coolingPoints = (timeline: Timeline, note: Note): readonly Pointed[] =>
  [...timeline.values()].flatMap((timed) => coolingPoint(timed, timeline, note));

const coolingPoint = (timed: Timed, timeline: Timeline, note: Note): readonly Pointed[] => {
  const cold = timed.stretches.find(isCold);
  const dish = note.dish(timed.task.dish);
  if (cold === undefined || dish === null) return [];
  const heat = heatBefore(timeline, timed, cold.start);
  if (heat === null) return [];
  const cases: readonly LimitCase[] = note.hazards(dish.source).has("cooked-rice") ? ["cooked-rice"] : [];
  const limits = limitsFor(note.region, "cool-to", cases);
  const length = between(heat, cold.start);
  return [
    pointAt({ hazard: "slow-cooling", dish, task: timed.task, shown: limits, counted: limits, length }),
  ];
};
