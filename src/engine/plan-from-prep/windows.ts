import type { Starts } from "./model.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/**
 * Opens the windows of everything that lags bind together as wide as what stands there leaves them.
 * False when some node that is to be placed has no start left.
 */
export const openWindows = (schedule: Schedule, set: number): boolean => {
  const { kin, start, earliest, latest, model } = schedule;
  const nodes = kin.sets[set] as readonly number[];
  for (const n of nodes) {
    const at = start[n] as number;
    const open = kin.open[n] as Int32Array;
    const stands = at !== nowhere;
    const free = givenUp(schedule, n);
    earliest[n] = stands ? at : free ? 0 : (open[0] as number);
    latest[n] = stands ? at : free ? model.horizon : (open[open.length - 1] as number);
  }
  const queue = [...nodes];
  const waiting = new Set(queue);
  return spread(schedule, queue, waiting, null);
};

/** A note of a window before it was narrowed. */
export type Trail = { readonly nodes: number[]; readonly earliest: number[]; readonly latest: number[] };

export const emptyTrail = (): Trail => ({ nodes: [], earliest: [], latest: [] });

/** Narrows the windows for a node that was put at its start; false when that leaves another no start. What changes is noted. */
export const narrow = (schedule: Schedule, node: number, trail: Trail): boolean => {
  const at = schedule.start[node] as number;
  note(schedule, node, trail);
  schedule.earliest[node] = at;
  schedule.latest[node] = at;
  return spread(schedule, [node], new Set([node]), trail);
};

/** Widens the windows again to what they were. */
export const undo = (schedule: Schedule, trail: Trail): void => {
  for (let i = trail.nodes.length - 1; i >= 0; i--) {
    const n = trail.nodes[i] as number;
    schedule.earliest[n] = trail.earliest[i] as number;
    schedule.latest[n] = trail.latest[i] as number;
  }
  trail.nodes.length = 0;
  trail.earliest.length = 0;
  trail.latest.length = 0;
};

const note = (schedule: Schedule, node: number, trail: Trail | null): void => {
  if (!trail) return;
  trail.nodes.push(node);
  trail.earliest.push(schedule.earliest[node] as number);
  trail.latest.push(schedule.latest[node] as number);
};

/** True for a task that found no place, or can have none: it takes no time, but what follows it still follows what it follows. */
const givenUp = (schedule: Schedule, n: number): boolean =>
  schedule.gone[n] === 1 || (schedule.kin.open[n] as Int32Array).length === 0;

const spread = (schedule: Schedule, queue: number[], waiting: Set<number>, trail: Trail | null): boolean => {
  const { kin, earliest, latest, start, length } = schedule;
  const { out, into } = kin;
  for (let head = 0; head < queue.length; head++) {
    const n = queue[head] as number;
    waiting.delete(n);
    const free = givenUp(schedule, n);
    const from = (earliest[n] as number) - (free ? (length[n] as number) : 0);
    for (let k = out.first[n] as number; k < (out.first[n + 1] as number); k++) {
      const other = out.other[k] as number;
      const least = from + (out.weight[k] as number);
      if (least <= (earliest[other] as number)) continue;
      const bypassed = givenUp(schedule, other);
      if ((free || bypassed) && out.most[k] === 1) continue;
      if (start[other] !== nowhere) return false;
      const open = bypassed ? least : snapUp(kin.open[other] as Int32Array, least);
      if (open < 0 || open > (latest[other] as number)) return false;
      note(schedule, other, trail);
      earliest[other] = open;
      if (!waiting.has(other)) {
        waiting.add(other);
        queue.push(other);
      }
    }
    const to = latest[n] as number;
    for (let k = into.first[n] as number; k < (into.first[n + 1] as number); k++) {
      const other = into.other[k] as number;
      const bypassed = givenUp(schedule, other);
      const most = to - (into.weight[k] as number) + (bypassed ? (length[other] as number) : 0);
      if (most >= (latest[other] as number)) continue;
      if ((free || bypassed) && into.most[k] === 1) continue;
      if (start[other] !== nowhere) return false;
      const open = bypassed ? most : snapDown(kin.open[other] as Int32Array, most);
      if (open < 0 || open < (earliest[other] as number)) return false;
      note(schedule, other, trail);
      latest[other] = open;
      if (!waiting.has(other)) {
        waiting.add(other);
        queue.push(other);
      }
    }
  }
  return true;
};

/** The first start from a minute on; -1 when there is none. */
const snapUp = (open: Int32Array, from: number): number => {
  for (let i = 1; i < open.length; i += 2) {
    if ((open[i] as number) >= from) return Math.max(open[i - 1] as number, from);
  }
  return -1;
};

const snapDown = (open: Int32Array, to: number): number => {
  for (let i = open.length - 2; i >= 0; i -= 2) {
    if ((open[i] as number) <= to) return Math.min(open[i + 1] as number, to);
  }
  return -1;
};

/** The latest member of a start set up to a minute. */
export const latestOf = (starts: Starts, to: number): number | null => {
  for (let i = starts.length - 1; i >= 0; i--) {
    const interval = starts[i];
    if (interval && interval.from <= to) return Math.min(interval.to, to);
  }
  return null;
};
