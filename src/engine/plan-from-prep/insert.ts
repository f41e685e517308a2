import { type Insertion, keepQuiet } from "./insertion.ts";
import { makeRoom } from "./make-room.ts";
import { putLatest } from "./place.ts";
import { nowhere, type Schedule, take } from "./schedule.ts";
import { openWindows } from "./windows.ts";

/** Takes nodes out, and opens the windows of what lags bind to them. False when no place is left for some of them. */
export const takeOut = (schedule: Schedule, nodes: readonly number[]): boolean => {
  for (const n of nodes) take(schedule, n);
  return openAround(schedule, nodes);
};

/** Opens the windows of what lags bind to these nodes. */
export const openAround = (schedule: Schedule, nodes: readonly number[]): boolean => {
  let fine = true;
  const seen = new Set<number>();
  for (const n of nodes) {
    schedule.gone[n] = 0;
    const set = schedule.kin.setOf[n] as number;
    if (seen.has(set)) continue;
    seen.add(set);
    if (!openWindows(schedule, set)) fine = false;
  }
  return fine;
};

/**
 * Places every node of the list, the latest first; gives back those that found no place. Others may be thrown out and
 * come back. The nodes must have been taken out and their windows opened.
 */
export const insertAll = (
  schedule: Schedule,
  nodes: readonly number[],
  state: Insertion,
): readonly number[] => {
  const queue = [...nodes];
  const waiting = new Uint8Array(schedule.model.nodes.length);
  for (const n of queue) waiting[n] = 1;
  const failed: number[] = [];
  while (queue.length > 0) {
    const node = takeLatest(schedule, queue, waiting, state.noise);
    waiting[node] = 0;
    if (state.quiet) keepQuiet(schedule, node);
    if (putLatest(schedule, node, state.chance)) continue;
    state.penalty[node] = (state.penalty[node] as number) + 1;
    const thrown = makeRoom(schedule, node, state);
    if (!thrown) {
      failed.push(node);
      if (state.strict) return failed;
      schedule.gone[node] = 1;
      openWindows(schedule, schedule.kin.setOf[node] as number);
      continue;
    }
    for (const n of thrown) {
      waiting[n] = 1;
      queue.push(n);
    }
  }
  return failed;
};

/**
 * Takes from the queue the task that can end latest as things are now, give or take its noise,
 * of those whose followers are all placed.
 */
const takeLatest = (
  schedule: Schedule,
  queue: number[],
  waiting: Uint8Array,
  noise: Int32Array | null,
): number => {
  const { model, latest, kin, start } = schedule;
  let best = 0;
  let bestKey = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < queue.length; i++) {
    const node = queue[i] as number;
    const task = model.nodes[node];
    let key = (latest[node] as number) + (task?.length ?? 0) + (noise ? (noise[node] as number) : 0);
    // What stands in an oven, or on equipment, finds a place less easily.
    key += (task?.oven.length ?? 0) > 0 ? 0.5 : (task?.resources.length ?? 0) > 0 ? 0.25 : 0;
    // Washing-up comes when everything that it waits for stands.
    if (kin.isWashing[node] === 1) key -= model.horizon;
    if (key <= bestKey) continue;
    let free = true;
    for (const f of kin.followers[node] as readonly number[]) {
      if (waiting[f] === 1 && start[f] === nowhere) free = false;
    }
    if (!free) continue;
    best = i;
    bestKey = key;
  }
  const node = queue[best] as number;
  queue[best] = queue[queue.length - 1] as number;
  queue.pop();
  return node;
};
