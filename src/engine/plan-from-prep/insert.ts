import type { Insertion } from "./insertion.ts";
import { noPath } from "./longest-paths.ts";
import { makeRoom } from "./make-room.ts";
import { latestSpot } from "./place.ts";
import { put, type Schedule } from "./schedule.ts";
import { windowOf } from "./windows.ts";

/** Order of insertion: the latest first, so that what follows a task stands before the task is placed. */
export const byLatest = (
  schedule: Schedule,
  noise: (node: number) => number,
): ((a: number, b: number) => number) => {
  const { model, paths } = schedule;
  const latest = model.nodes.map((node, n) => {
    const landing = model.landing[node.course];
    const due = model.due[node.course] ?? model.horizon;
    if (landing === undefined) return model.horizon;
    const tail = paths.least(n, landing);
    // Work that no lag ties to the plates still belongs before its course.
    return due - (tail > noPath / 2 ? tail : node.length);
  });
  const key = (n: number): number => (latest[n] ?? 0) + noise(n);
  const rank = (n: number): number => {
    const task = model.nodes[n];
    return (task?.oven.length ?? 0) > 0 ? 0 : (task?.resources.length ?? 0) > 0 ? 1 : 2;
  };
  return (a, b) => key(b) - key(a) || rank(a) - rank(b) || a - b;
};

/** Places every node of the list; gives back those that found no place. Others may be thrown out and come back. */
export const insertAll = (
  schedule: Schedule,
  nodes: readonly number[],
  order: (a: number, b: number) => number,
  state: Insertion,
): readonly number[] => {
  const queue = [...nodes].sort(order);
  const failed: number[] = [];
  while (queue.length > 0) {
    const node = state.restless ? takeLatest(schedule, queue, state.restless) : queue.shift();
    if (node === undefined) break;
    const spot = latestSpot(schedule, node, state.chance);
    if (spot) {
      put(schedule, node, spot);
      continue;
    }
    state.penalty[node] = (state.penalty[node] ?? 0) + 1;
    const thrown = makeRoom(schedule, node, state);
    if (!thrown) {
      failed.push(node);
      continue;
    }
    queue.push(...thrown);
    queue.sort(order);
  }
  return failed;
};

/**
 * Takes from the queue the task that can stand latest as things are now, give or take its noise,
 * of those whose followers are all placed.
 */
const takeLatest = (
  schedule: Schedule,
  queue: number[],
  noise: (node: number) => number,
): number | undefined => {
  const waiting = new Set(queue);
  let best = 0;
  let bestKey = Number.NEGATIVE_INFINITY;
  queue.forEach((node, i) => {
    const follows = schedule.model.out[node] ?? [];
    if (follows.some((arc) => !arc.most && arc.weight >= 0 && waiting.has(arc.to))) return;
    const key = windowOf(schedule, node).to + (schedule.model.nodes[node]?.length ?? 0) + noise(node);
    if (key > bestKey) {
      best = i;
      bestKey = key;
    }
  });
  return queue.splice(best, 1)[0];
};
