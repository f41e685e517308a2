import { takeOut } from "./insert.ts";
import type { Model } from "./model.ts";
import { latestSpot, putAt } from "./place.ts";
import { nowhere, put, type Schedule, type Spot, spotOf } from "./schedule.ts";

/** 1 for each node that is a plate of some course. */
export const platesOf = (model: Model): Uint8Array => {
  const plates = new Uint8Array(model.nodes.length);
  const index = new Map(model.nodes.map((node, n) => [node.id, n]));
  for (const goal of model.goals) for (const id of goal.plateTasks) plates[index.get(id) ?? 0] = 1;
  return plates;
};

/**
 * Begins each task but the plates at the start that is wanted for it, or half of the way there, the earliest first, so
 * that there is room for what follows; as far as limits, hands and places let it, no further sooner than `farthest`,
 * and as long as `allowed` says yes to where everything then stands.
 */
export const beginSooner = (
  schedule: Schedule,
  plates: Uint8Array,
  farthest: number,
  wanted: (node: number) => number,
  allowed: (start: Int32Array) => boolean,
): void => {
  const { model, start } = schedule;
  const order = Array.from({ length: model.taskCount }, (_, n) => n)
    .filter((n) => start[n] !== nowhere && plates[n] !== 1)
    .sort((a, b) => (start[a] as number) - (start[b] as number) || a - b);
  for (const node of order) {
    const now = start[node] as number;
    const want = Math.max(now - farthest, Math.floor(wanted(node)));
    if (want >= now) continue;
    const spot = spotOf(schedule, node) as Spot;
    takeOut(schedule, [node]);
    const moved = [want, Math.ceil((want + now) / 2)].some((at) => {
      const sooner = latestSpot(schedule, node, null, at);
      if (sooner === null || sooner.start < now - farthest || !putAt(schedule, node, sooner)) return false;
      if (allowed(start)) return true;
      takeOut(schedule, [node]);
      return false;
    });
    if (!moved) put(schedule, node, spot.start, spot.cook, spot.oven);
  }
};
