import type { Chance } from "./chance.ts";
import { clashAt } from "./clash.ts";
import type { Model, Node } from "./model.ts";
import type { Schedule, Spot } from "./schedule.ts";
import { latestOf, leavesRoom, windowOf } from "./windows.ts";

/** Attempts at one interval before it is given up; each attempt jumps past what stands in the way. */
const mostJumps = 400;

export type Span = { readonly from: number; readonly to: number };

/**
 * The latest spot that shifts, lags, hands and equipment leave for a node; null when there is none.
 * Work that nothing hurries is looked for before the last hour and the service first.
 * Of equally late spots: the cook who has the dish already, then the one with less to do; chance, when given, decides instead.
 */
export const latestSpot = (schedule: Schedule, node: number, chance: Chance | null = null): Spot | null => {
  const task = schedule.model.nodes[node];
  if (!task) return null;
  const window = windowOf(schedule, node);
  if (window.from > window.to) return null;
  const calm = calmEnd(schedule.model, task, window.to);
  if (isPatient(task)) {
    const spot = latestIn(schedule, node, task, { from: window.from, to: calm }, chance, true);
    if (spot) return spot;
  }
  if (calm < window.to && calm >= window.from) {
    const spot = latestIn(schedule, node, task, { from: window.from, to: calm }, chance, false);
    if (spot) return spot;
  }
  return latestIn(schedule, node, task, window, chance, false);
};

/** The part of a shift that is filled with work that could as well be done in another, so that a slip has somewhere to go. */
const comfortable = 0.75;

/** Work by hand that no quality hangs on. */
const isPatient = (task: Node): boolean => !task.finishing && task.weight === 0 && task.handsMinutes > 0;

/** The shift in which a task's hands begin, when it is fuller than is comfortable with the task in it; null otherwise. */
export const crowdedShift = (schedule: Schedule, task: Node, cook: number, start: number): number | null => {
  const first = task.attended.find((a) => a.hands);
  const shifts = schedule.model.shifts[cook];
  if (!first || !shifts) return null;
  const at = start + first.offset;
  const s = shifts.findIndex((shift) => shift.from <= at && at < shift.to);
  const shift = shifts[s];
  if (!shift) return null;
  const load = (schedule.shiftHands[cook]?.[s] ?? 0) + task.handsMinutes;
  return load > comfortable * (shift.to - shift.from) ? s : null;
};

/** The latest start that keeps a task's hands out of the quiet hours; the given one when that is no matter. */
export const calmEnd = (model: Model, task: Node, latest: number): number => {
  const hands = task.attended.filter((a) => a.hands);
  const first = hands[0];
  const last = hands.at(-1);
  if (task.finishing || task.weight > 0 || !first || !last) return latest;
  let to = latest;
  for (let s = model.calm.length - 1; s >= 0; s--) {
    const calm = model.calm[s];
    if (calm && to + last.offset + last.length > calm.from && to + first.offset < calm.to) {
      to = calm.from - last.offset - last.length;
    }
  }
  return to;
};

const latestIn = (
  schedule: Schedule,
  node: number,
  task: Node,
  window: Span,
  chance: Chance | null,
  spread: boolean,
): Spot | null => {
  const cooks = task.attended.length > 0 ? schedule.model.cooks.map((_, c) => c) : [-1];
  const ovens = task.ovens.length > 0 ? task.ovens : [-1];
  let best: Spot[] = [];
  let bestStart = window.from - 1;
  for (const cook of cooks) {
    for (const oven of ovens) {
      const start = latestStart(
        schedule,
        node,
        { start: 0, cook, oven },
        {
          from: Math.max(window.from, bestStart),
          to: window.to,
        },
        spread,
      );
      if (start === null) continue;
      const spot = { start, cook, oven };
      if (start > bestStart) best = [spot];
      else best.push(spot);
      bestStart = start;
    }
  }
  if (best.length <= 1) return best[0] ?? null;
  if (chance) return best[chance(best.length)] ?? null;
  return fittest(schedule, task, best);
};

/** The latest start inside a window for a given cook and oven; null when there is none. */
const latestStart = (
  schedule: Schedule,
  node: number,
  by: Spot,
  window: Span,
  spread: boolean,
): number | null => {
  const task = schedule.model.nodes[node];
  const starts = task?.starts[Math.max(by.cook, 0)] ?? [];
  let to = window.to;
  for (let jumps = 0; jumps < mostJumps; jumps++) {
    const start = latestOf(starts, to);
    if (start === null || start < window.from) return null;
    const room = leavesRoom(schedule, node, start, window.from);
    if (room === null) return null;
    if (room < start) {
      to = room;
      continue;
    }
    const crowded = spread && task ? crowdedShift(schedule, task, by.cook, start) : null;
    if (crowded !== null) {
      to = (schedule.model.shifts[by.cook]?.[crowded]?.from ?? 0) - (task?.attended[0]?.offset ?? 0) - 1;
      continue;
    }
    const clash = clashAt(schedule, node, { start, cook: by.cook, oven: by.oven });
    if (!clash) return start;
    to = clash.earlier;
  }
  return null;
};

const fittest = (schedule: Schedule, task: Node, spots: readonly Spot[]): Spot | null => {
  const { nodes, cooks, ovenIds } = schedule.model;
  const load = cooks.map(() => 0);
  const dish = cooks.map(() => 0);
  const warm = ovenIds.map(() => 0);
  schedule.spots.forEach((spot, n) => {
    const other = nodes[n];
    if (!spot || !other || spot.cook < 0) return;
    load[spot.cook] = (load[spot.cook] ?? 0) + other.handsMinutes;
    if (other.dish === task.dish) dish[spot.cook] = (dish[spot.cook] ?? 0) + 1;
  });
  for (const [o, list] of schedule.baking.entries()) {
    warm[o] = list.filter((b) => task.oven.some((t) => t.celsius === b.celsius)).length;
  }
  const rank = (spot: Spot): readonly number[] => [
    -(warm[spot.oven] ?? 0),
    -(dish[spot.cook] ?? 0),
    load[spot.cook] ?? 0,
    spot.cook,
    spot.oven,
  ];
  return [...spots].sort((a, b) => compareRanks(rank(a), rank(b)))[0] ?? null;
};

/** Orders lists of numbers by their first difference. */
export const compareRanks = (a: readonly number[], b: readonly number[]): number => {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};
