import { clashAt, inTheWay } from "./clash.ts";
import type { Insertion } from "./insertion.ts";
import { noPath } from "./longest-paths.ts";
import { remember, restore } from "./memory.ts";
import type { Starts } from "./model.ts";
import { latestSpot } from "./place.ts";
import { put, type Schedule, type Spot, take } from "./schedule.ts";
import { latestOf, leavesRoom, windowOf } from "./windows.ts";

/** Most tasks that may be thrown out to make room for one. */
const mostThrown = 4;
/** Most tasks that may be moved to an earlier hour together. */
const mostPushed = 12;
/** Spots looked at when making room for one task. */
const mostLooks = 10;

/**
 * Throws out the few tasks that cost least by their penalties and puts the node in their place; null when no few make room.
 * What fails often becomes dear to throw out, and throws are counted, so it ends
 * (ejection with penalties after Nagata and Bräysy 2009, from memory).
 */
export const makeRoom = (schedule: Schedule, node: number, state: Insertion): readonly number[] | null => {
  if (state.throws <= 0 || state.looks <= 0) return null;
  const before = remember(schedule);
  const pushed = pushEarlier(schedule, node, state);
  const thrown = [...throwForTime(schedule, node, state)];
  const found = thrown.length <= mostThrown ? cheapestSpot(schedule, node, state) : null;
  const cost = found ? costOf(thrown, state) + costOf(found.thrown, state) : Number.POSITIVE_INFINITY;
  if (pushed && costOf(pushed.thrown, state) < cost) {
    restore(schedule, before);
    for (const n of pushed.thrown) take(schedule, n);
    put(schedule, node, pushed.spot);
    state.throws -= Math.max(1, pushed.thrown.length);
    return pushed.thrown;
  }
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

/**
 * A spot before the window: what follows within a limit and stands too late for it comes out, and will follow it there.
 * This is how a whole chain moves to an earlier hour, when its last link was put where the first has no room.
 */
const pushEarlier = (
  schedule: Schedule,
  node: number,
  state: Insertion,
): { readonly spot: Spot; readonly thrown: readonly number[] } | null => {
  const { paths, spots, model } = schedule;
  const thrown: number[] = [];
  for (const other of paths.kin(node)) {
    const spot = spots[other];
    const after = paths.least(other, node);
    if (!spot || other === node || other >= model.taskCount || after <= noPath / 2 || after > 0) continue;
    // A limit from what follows: a path back that is not work that comes before.
    if (paths.least(node, other) > noPath / 2 && spot.start + after > windowOf(schedule, node).from - 1) {
      thrown.push(other);
    }
  }
  if (thrown.length === 0 || thrown.length > mostPushed) return null;
  const stood = thrown.map((n) => spots[n] ?? null);
  for (const n of thrown) take(schedule, n);
  const spot = latestSpot(schedule, node, state.chance);
  const late = thrown.filter((n, i) => {
    const start = stood[i]?.start ?? 0;
    return spot && (start + paths.least(n, node) > spot.start || spot.start + paths.least(node, n) > start);
  });
  const back = (nodes: readonly number[]): void => {
    for (const n of nodes) {
      const old = stood[thrown.indexOf(n)];
      if (old) put(schedule, n, old);
    }
  };
  // Those that need not follow stay, unless the spot was only free without them.
  back(thrown.filter((n) => !late.includes(n)));
  const clear = spot !== null && clashAt(schedule, node, spot) === null;
  back(late);
  return spot === null ? null : { spot, thrown: clear ? late : thrown };
};

const costOf = (nodes: readonly number[], state: Insertion): number => {
  let sum = 0;
  for (const n of nodes) sum += (state.penalty[n] ?? 0) + 1;
  return sum;
};

/** Takes out tasks whose lags leave a node no start at all: those on the side that costs less. */
const throwForTime = (schedule: Schedule, node: number, state: Insertion): readonly number[] => {
  const window = windowOf(schedule, node);
  const open = latestOf(schedule.model.nodes[node]?.anyStarts ?? [], window.to);
  const fits = open !== null && open >= window.from;
  // A start that leaves what must come before it no start is no start either.
  const squeezed = fits && leavesRoom(schedule, node, open, window.from) === null;
  if (fits && !squeezed) return [];
  const { paths, spots, model } = schedule;
  const early: number[] = [];
  const late: number[] = [];
  const earliest = earliestOf(schedule.model.nodes[node]?.anyStarts ?? [], window.from);
  let pinned = { early: false, late: false };
  for (const other of paths.kin(node)) {
    const spot = spots[other];
    if (!spot || other === node) continue;
    const after = paths.least(other, node);
    const before = paths.least(node, other);
    const fixed = other >= model.taskCount;
    if (!squeezed && after > noPath / 2 && spot.start + after > (open ?? window.to)) {
      if (fixed) pinned = { ...pinned, early: true };
      else early.push(other);
    }
    const bound = squeezed ? window.to + 1 : Math.max(window.from, earliest);
    if (before > noPath / 2 && spot.start - before < bound) {
      if (fixed) pinned = { ...pinned, late: true };
      else late.push(other);
    }
  }
  const takeEarly =
    !squeezed && (pinned.late || (!pinned.early && costOf(early, state) <= costOf(late, state)));
  const out = takeEarly ? early : late;
  for (const n of out) take(schedule, n);
  return out;
};

const earliestOf = (starts: Starts, from: number): number =>
  starts.find((interval) => interval.to >= from)?.from ?? from;

/** Of the spots inside the window, the one whose occupants cost least to throw out. */
const cheapestSpot = (
  schedule: Schedule,
  node: number,
  state: Insertion,
): { readonly spot: Spot; readonly thrown: readonly number[] } | null => {
  const task = schedule.model.nodes[node];
  if (!task) return null;
  const window = windowOf(schedule, node);
  if (window.from > window.to) return null;
  let best: { spot: Spot; thrown: readonly number[] } | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  const cooks = task.attended.length > 0 ? schedule.model.cooks.map((_, c) => c) : [-1];
  const ovens = task.ovens.length > 0 ? task.ovens : [-1];
  for (const cook of cooks) {
    for (const oven of ovens) {
      let looks = 0;
      let to = window.to;
      while (looks < mostLooks) {
        looks += 1;
        state.looks -= 1;
        const start = latestOf(task.starts[Math.max(cook, 0)] ?? [], to);
        if (start === null || start < window.from) break;
        const room = leavesRoom(schedule, node, start, window.from);
        if (room === null) break;
        if (room < start) {
          to = room;
          continue;
        }
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

/** The cheapest tasks, taken one clash at a time, that free a spot; null when more than a few, or nothing can move. */
const occupants = (
  schedule: Schedule,
  node: number,
  spot: Spot,
  state: Insertion,
): readonly number[] | null => {
  const thrown: number[] = [];
  const stood: Spot[] = [];
  let clear = false;
  while (!clear && thrown.length <= mostThrown) {
    const clash = clashAt(schedule, node, spot);
    if (!clash) {
      clear = true;
      break;
    }
    const there = inTheWay(schedule, clash);
    let cheapest = -1;
    for (const n of there) {
      if (cheapest < 0 || (state.penalty[n] ?? 0) < (state.penalty[cheapest] ?? 0)) cheapest = n;
    }
    if (cheapest < 0) break;
    const spotOf = schedule.spots[cheapest];
    if (!spotOf) break;
    stood.push(spotOf);
    take(schedule, cheapest);
    thrown.push(cheapest);
  }
  for (let i = thrown.length - 1; i >= 0; i--) {
    const n = thrown[i];
    const spotOf = stood[i];
    if (n !== undefined && spotOf) put(schedule, n, spotOf);
  }
  return clear && thrown.length <= mostThrown ? thrown : null;
};
