import type { Chance } from "./chance.ts";
import { noPath } from "./longest-paths.ts";
import { latestSpot, type Span } from "./place.ts";
import {
  clashAt,
  inTheWay,
  put,
  remember,
  restore,
  type Schedule,
  type Spot,
  take,
  windowOf,
} from "./schedule.ts";

/** Most tasks that may be thrown out to make room for one. */
const mostThrown = 4;
/** Spots looked at when making room for one task. */
const mostLooks = 24;

/** How insertion goes on: penalties grow with each failure, and the work is counted. */
export type Insertion = {
  /** How often each node failed to find a place; decides who may throw out whom. */
  readonly penalty: number[];
  /** Throws left. */
  throws: number;
  readonly chance: Chance | null;
};

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
    const node = queue.shift();
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
 * Throws out the cheapest few tasks that keep a node from a spot and puts the node there; null when none are cheap enough.
 * The sum of their penalties must be below the node's own, and throws are counted, so it ends
 * (ejection with penalties after Nagata and Bräysy 2009, from memory).
 */
const makeRoom = (schedule: Schedule, node: number, state: Insertion): readonly number[] | null => {
  if (state.throws <= 0) return null;
  const before = remember(schedule);
  const purse = state.penalty[node] ?? 0;
  const thrown = [...throwForTime(schedule, node, state)];
  const left = purse - costOf(thrown, state);
  const found = left > 0 && thrown.length <= mostThrown ? cheapestSpot(schedule, node, state, left) : null;
  if (!found) {
    restore(schedule, before);
    return null;
  }
  for (const n of found.thrown) take(schedule, n);
  put(schedule, node, found.spot);
  thrown.push(...found.thrown);
  state.throws -= thrown.length;
  return thrown;
};

const costOf = (nodes: readonly number[], state: Insertion): number =>
  nodes.reduce((sum, n) => sum + (state.penalty[n] ?? 0) + 1, 0);

/** Takes out tasks whose lags leave a node no start at all: those on the side that costs less. */
const throwForTime = (schedule: Schedule, node: number, state: Insertion): readonly number[] => {
  const window = windowOf(schedule, node);
  if (window.from <= window.to) return [];
  const { paths, spots, model } = schedule;
  const early: number[] = [];
  const late: number[] = [];
  let pinned = { early: false, late: false };
  for (const other of paths.kin(node)) {
    const spot = spots[other];
    if (!spot || other === node) continue;
    const after = paths.least(other, node);
    const before = paths.least(node, other);
    const fixed = other >= model.taskCount;
    if (after > noPath / 2 && spot.start + after > window.to) {
      if (fixed) pinned = { ...pinned, early: true };
      else early.push(other);
    }
    if (before > noPath / 2 && spot.start - before < window.from) {
      if (fixed) pinned = { ...pinned, late: true };
      else late.push(other);
    }
  }
  const takeEarly = pinned.late || (!pinned.early && costOf(early, state) <= costOf(late, state));
  const out = takeEarly ? early : late;
  for (const n of out) take(schedule, n);
  return out;
};

/** Of the spots inside the window, the one whose occupants cost least to throw out, if below the limit. */
const cheapestSpot = (
  schedule: Schedule,
  node: number,
  state: Insertion,
  limit: number,
): { readonly spot: Spot; readonly thrown: readonly number[] } | null => {
  const task = schedule.model.nodes[node];
  if (!task) return null;
  const window = windowOf(schedule, node);
  if (window.from > window.to) return null;
  let best: { spot: Spot; thrown: readonly number[] } | null = null;
  let bestCost = limit;
  const cooks = task.attended.length > 0 ? schedule.model.cooks.map((_, c) => c) : [-1];
  const ovens = task.ovens.length > 0 ? task.ovens : [-1];
  for (const cook of cooks) {
    for (const oven of ovens) {
      let looks = 0;
      let to = window.to;
      while (looks < mostLooks) {
        looks += 1;
        const start = latestOpen(task.starts[Math.max(cook, 0)] ?? [], { from: window.from, to });
        if (start === null) break;
        const spot = { start, cook, oven };
        const clash = clashAt(schedule, node, spot);
        const thrown = occupants(schedule, node, spot, state);
        if (thrown && costOf(thrown, state) < bestCost) {
          best = { spot, thrown };
          bestCost = costOf(thrown, state);
        }
        to = Math.min(clash ? clash.earlier : start - 1, start - 1);
      }
    }
  }
  return best;
};

const latestOpen = (starts: readonly Span[], window: Span): number | null => {
  for (let i = starts.length - 1; i >= 0; i--) {
    const interval = starts[i];
    if (!interval || interval.from > window.to) continue;
    const start = Math.min(interval.to, window.to);
    return start >= window.from && start >= interval.from ? start : null;
  }
  return null;
};

/** The cheapest tasks, taken one clash at a time, that free a spot; null when more than a few, or nothing can move. */
const occupants = (
  schedule: Schedule,
  node: number,
  spot: Spot,
  state: Insertion,
): readonly number[] | null => {
  const before = remember(schedule);
  const thrown: number[] = [];
  let clear = false;
  while (!clear && thrown.length <= mostThrown) {
    const clash = clashAt(schedule, node, spot);
    if (!clash) {
      clear = true;
      break;
    }
    const there = inTheWay(schedule, clash);
    const cheapest = [...there].sort((a, b) => costOf([a], state) - costOf([b], state) || a - b)[0];
    if (cheapest === undefined) break;
    take(schedule, cheapest);
    thrown.push(cheapest);
  }
  restore(schedule, before);
  return clear && thrown.length <= mostThrown ? thrown : null;
};
