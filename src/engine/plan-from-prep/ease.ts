import { takeOut } from "./insert.ts";
import { compareCosts, costOf, emptyCost } from "./objective.ts";
import { latestSpot, putAt } from "./place.ts";
import { nowhere, put, type Schedule, type Spot, spotOf } from "./schedule.ts";

/** Minutes by which work that nothing hurries is begun before it must; tried in this order. Common practice, no source. */
const sooner = [30, 20, 10] as const;
/** It is not moved further than this for it, minutes: another shift is no slack but another plan. */
const farthest = 60;

/**
 * Begins work that nothing hurries a little before it must, the earliest first, so that a slip has somewhere to go. A plan
 * that stands as late as it can is late as soon as anything runs over. Nothing gets worse by it in any level.
 */
export const ease = (schedule: Schedule): void => {
  const { model, start } = schedule;
  const cost = costOf(schedule);
  const moved = emptyCost(model);
  const order = Array.from({ length: model.taskCount }, (_, n) => n)
    .filter((n) => start[n] !== nowhere && isPatient(schedule, n))
    .sort((a, b) => (start[a] as number) - (start[b] as number) || a - b);
  for (const node of order) {
    const spot = spotOf(schedule, node) as Spot;
    takeOut(schedule, [node]);
    let eased = false;
    for (const by of sooner) {
      const earlier = latestSpot(schedule, node, null, spot.start - by);
      if (earlier === null || earlier.start < spot.start - farthest || earlier.cook !== spot.cook) continue;
      if (!putAt(schedule, node, earlier)) continue;
      if (compareCosts(costOf(schedule, moved), cost) <= 0) {
        eased = true;
        break;
      }
      takeOut(schedule, [node]);
    }
    if (!eased) put(schedule, node, spot.start, spot.cook, spot.oven);
  }
};

const isPatient = ({ model }: Schedule, node: number): boolean => {
  const task = model.nodes[node];
  return task !== undefined && !task.finishing && task.weight === 0 && task.coldWeight === 0;
};
