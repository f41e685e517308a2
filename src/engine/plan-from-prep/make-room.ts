import { clashAt, inTheWay } from "./clash.ts";
import { type Insertion, keepQuiet } from "./insertion.ts";
import { noPath } from "./longest-paths.ts";
import type { Node } from "./model.ts";
import { cooksOf, latestSpot, ovensOf, putAt } from "./place.ts";
import { nowhere, put, type Schedule, type Spot, spotOf, take } from "./schedule.ts";
import { latestOf, openWindows } from "./windows.ts";

/** Most tasks that may be thrown out to make room for one. */
const mostThrown = 4;
/** Most tasks that may be moved to an earlier hour together. */
const mostPushed = 12;
/** Spots looked at, of each cook and oven, when making room for one task. */
const mostLooks = 10;

type Way = { readonly spot: Spot | null; readonly thrown: readonly number[] };

/**
 * Throws out the few tasks that cost least by their penalties and puts the node in their place; null when no few make room.
 * What fails often becomes dear to throw out, and throws are counted, so it ends
 * (ejection with penalties after Nagata and Bräysy 2009, from memory).
 */
export const makeRoom = (schedule: Schedule, node: number, state: Insertion): readonly number[] | null => {
  const task = schedule.model.nodes[node];
  if (!task || state.throws <= 0 || state.looks <= 0) return null;
  const ways = [
    pushEarlier(schedule, node, state, true),
    pushEarlier(schedule, node, state, false),
    throwForTime(schedule, node, state),
  ];
  if (state.quiet) keepQuiet(schedule, node);
  const fits = (schedule.earliest[node] as number) <= (schedule.latest[node] as number);
  if (fits) ways.push(cheapestSpot(schedule, node, task, state));
  const found = ways
    .flatMap((way) => (way ? [{ way, cost: costOf(way.thrown, state) * whim(state) }] : []))
    .sort((a, b) => a.cost - b.cost);
  for (const { way } of found) {
    const stood = way.thrown.map((n) => spotOf(schedule, n));
    for (const n of way.thrown) take(schedule, n);
    reopen(schedule, [node, ...way.thrown]);
    const spot = way.spot ?? latestSpot(schedule, node, state.chance);
    if (spot && isOpen(schedule, node, task, spot) && putAt(schedule, node, spot)) {
      state.throws -= Math.max(1, way.thrown.length);
      return way.thrown;
    }
    way.thrown.forEach((n, i) => {
      const old = stood[i];
      if (old) put(schedule, n, old.start, old.cook, old.oven);
    });
    reopen(schedule, [node, ...way.thrown]);
  }
  return null;
};

/** Where chance has a say, what costs a little more is thrown as well now and then: that ends rounds of the same few. */
const whim = (state: Insertion): number => (state.chance ? least + state.chance.share() : 1);
const least = 0.6;

const isOpen = (schedule: Schedule, node: number, task: Node, spot: Spot): boolean =>
  (schedule.earliest[node] as number) <= spot.start &&
  spot.start <= (schedule.latest[node] as number) &&
  cooksOf(schedule, node, task).includes(spot.cook) &&
  clashAt(schedule, node, spot.start, spot.cook, spot.oven) === null;

const reopen = (schedule: Schedule, nodes: readonly number[]): void => {
  const sets = new Set(nodes.map((n) => schedule.kin.setOf[n] as number));
  for (const set of sets) openWindows(schedule, set);
};

const costOf = (nodes: readonly number[], state: Insertion): number => {
  let sum = 0;
  for (const n of nodes) sum += (state.penalty[n] as number) + 1;
  return sum;
};

/**
 * A spot before the window: what follows within a limit and stands too late for it comes out, and will follow it there;
 * or else what comes before it and ends too late for it. This is how a whole chain moves to an earlier hour, when one
 * link was put where another has no room.
 */
const pushEarlier = (schedule: Schedule, node: number, state: Insertion, followers: boolean): Way | null => {
  const { paths, start, model } = schedule;
  const thrown: number[] = [];
  for (const other of paths.kin(node)) {
    const at = start[other] as number;
    if (at === nowhere || other === node || other >= model.taskCount) continue;
    const after = paths.least(other, node);
    if (after <= noPath / 2 || after > 0 === followers) continue;
    // A limit from what follows: a path back that is not work that comes before.
    if (followers && paths.least(node, other) <= noPath / 2) continue;
    if (at + after > (schedule.earliest[node] as number) - 1) thrown.push(other);
  }
  if (thrown.length === 0 || thrown.length > mostPushed) return null;
  const stood = thrown.map((n) => spotOf(schedule, n) as Spot);
  for (const n of thrown) take(schedule, n);
  reopen(schedule, [node]);
  const task = schedule.model.nodes[node] as Node;
  const free = latestSpot(schedule, node, state.chance);
  const taken = free || followers ? null : cheapestSpot(schedule, node, task, state);
  const spot = free ?? taken?.spot ?? null;
  const late = thrown.filter((n, i) => {
    const at = (stood[i] as Spot).start;
    return spot && (at + paths.least(n, node) > spot.start || spot.start + paths.least(node, n) > at);
  });
  thrown.forEach((n, i) => {
    const old = stood[i] as Spot;
    // Those that need not follow stay, unless the spot was only free without them.
    if (!late.includes(n)) put(schedule, n, old.start, old.cook, old.oven);
  });
  const clear =
    taken !== null || (spot !== null && clashAt(schedule, node, spot.start, spot.cook, spot.oven) === null);
  thrown.forEach((n, i) => {
    const old = stood[i] as Spot;
    if (late.includes(n)) put(schedule, n, old.start, old.cook, old.oven);
  });
  reopen(schedule, [node]);
  return spot === null ? null : { spot, thrown: [...(clear ? late : thrown), ...(taken?.thrown ?? [])] };
};

/** Takes out tasks whose lags leave a node no start at all, or leave it none with hands free: those on the side that costs less. */
const throwForTime = (schedule: Schedule, node: number, state: Insertion): Way | null => {
  const { paths, start, model, kin } = schedule;
  const open = kin.open[node] as Int32Array;
  if (open.length === 0) return null;
  let from = open[0] as number;
  let to = open[open.length - 1] as number;
  const early: number[] = [];
  const late: number[] = [];
  for (const other of paths.kin(node)) {
    const at = start[other] as number;
    if (at === nowhere || other === node) continue;
    const after = paths.least(other, node);
    const before = paths.least(node, other);
    if (after > noPath / 2) from = Math.max(from, at + after);
    if (before > noPath / 2) to = Math.min(to, at - before);
  }
  if (from <= to && latestOf(model.nodes[node]?.anyStarts ?? [], to) !== null) {
    // Time there is, but other work that waits for it has none left: what follows comes out.
    if ((schedule.earliest[node] as number) <= (schedule.latest[node] as number)) return null;
  }
  let fixedEarly = false;
  let fixedLate = false;
  for (const other of paths.kin(node)) {
    const at = start[other] as number;
    if (at === nowhere || other === node) continue;
    const after = paths.least(other, node);
    const before = paths.least(node, other);
    const fixed = other >= model.taskCount;
    if (after > noPath / 2 && at + after > to) {
      if (fixed) fixedEarly = true;
      else early.push(other);
    }
    if (before > noPath / 2 && at - before < from) {
      if (fixed) fixedLate = true;
      else late.push(other);
    }
  }
  const usable = (list: readonly number[], fixed: boolean): boolean =>
    !fixed && list.length > 0 && list.length <= mostThrown;
  const takeEarly =
    usable(early, fixedEarly) && (!usable(late, fixedLate) || costOf(early, state) <= costOf(late, state));
  if (takeEarly) return { spot: null, thrown: early };
  return usable(late, fixedLate) ? { spot: null, thrown: late } : null;
};

/** Of the spots inside the window, the one whose occupants cost least to throw out. */
const cheapestSpot = (schedule: Schedule, node: number, task: Node, state: Insertion): Way | null => {
  const from = schedule.earliest[node] as number;
  let best: Way | null = null;
  let bestCost = Number.POSITIVE_INFINITY;
  for (const cook of cooksOf(schedule, node, task)) {
    for (const oven of ovensOf(task)) {
      let to = schedule.latest[node] as number;
      const ready = oven < 0 ? from : Math.max(from, task.ovenReady[oven] ?? 0);
      for (let looks = 0; looks < mostLooks; looks++) {
        state.looks -= 1;
        const start = latestOf(task.starts[Math.max(cook, 0)] ?? [], to);
        if (start === null || start < ready) break;
        const spot = { start, cook, oven };
        const clash = clashAt(schedule, node, start, cook, oven);
        const factor = whim(state);
        const thrown = occupants(schedule, node, spot, state, bestCost / factor);
        if (thrown) {
          best = { spot, thrown };
          bestCost = costOf(thrown, state) * factor;
          // Less than one cannot be thrown.
          if (bestCost <= least) return best;
        }
        to = Math.min(clash ? clash.earlier : start - 1, start - 1);
      }
    }
  }
  return best;
};

/** The cheapest tasks, taken one clash at a time, that free a spot for less than a cost; null when there are none. */
const occupants = (
  schedule: Schedule,
  node: number,
  spot: Spot,
  state: Insertion,
  below: number,
): readonly number[] | null => {
  const thrown: number[] = [];
  const stood: Spot[] = [];
  let clear = false;
  let cost = 0;
  while (!clear && thrown.length <= mostThrown) {
    const clash = clashAt(schedule, node, spot.start, spot.cook, spot.oven);
    if (!clash) {
      clear = true;
      break;
    }
    let cheapest = -1;
    for (const n of inTheWay(schedule, clash)) {
      if (cheapest < 0 || (state.penalty[n] as number) < (state.penalty[cheapest] as number)) cheapest = n;
    }
    if (cheapest < 0) break;
    cost += (state.penalty[cheapest] as number) + 1;
    if (cost >= below) break;
    stood.push(spotOf(schedule, cheapest) as Spot);
    take(schedule, cheapest);
    thrown.push(cheapest);
  }
  for (let i = thrown.length - 1; i >= 0; i--) {
    const old = stood[i] as Spot;
    put(schedule, thrown[i] as number, old.start, old.cook, old.oven);
  }
  return clear && thrown.length <= mostThrown ? thrown : null;
};
