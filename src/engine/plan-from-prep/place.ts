import type { Chance } from "../search/chance.ts";
import { clearBefore } from "./clash.ts";
import type { Model, Node } from "./model.ts";
import { nowhere, put, type Schedule, type Spot, take } from "./schedule.ts";
import { emptyTrail, latestOf, narrow, undo } from "./windows.ts";

/** Attempts at one interval before it is given up; each attempt jumps past what stands in the way. */
const mostJumps = 400;
/** Spots tried of which each leaves something else no start. */
const mostSqueezes = 40;

export type Span = { readonly from: number; readonly to: number };

/**
 * The latest spot that shifts, lags, hands and equipment leave for a node; null when there is none.
 * Work that nothing hurries is looked for before the last hour and the service first.
 * Of equally late spots: the cook who has the dish already, then the one with less to do; chance, when given, decides instead.
 */
export const latestSpot = (
  schedule: Schedule,
  node: number,
  chance: Chance | null = null,
  before: number | null = null,
): Spot | null => {
  const task = schedule.model.nodes[node];
  if (!task) return null;
  const from = schedule.earliest[node] as number;
  const to = Math.min(schedule.latest[node] as number, before ?? schedule.model.horizon);
  if (from > to) return null;
  for (const within of soonAfter(schedule, node, chance)) {
    const near = { from, to: Math.min(to, from + within) };
    const spot = latestIn(schedule, node, task, near, chance, false);
    if (spot) return spot;
  }
  const calm = calmEnd(schedule.model, task, to);
  if (isPatient(task)) {
    const spot = latestIn(schedule, node, task, { from, to: calm }, chance, true);
    if (spot) return spot;
  }
  if (calm < to && calm >= from) {
    const spot = latestIn(schedule, node, task, { from, to: calm }, chance, false);
    if (spot) return spot;
  }
  return latestIn(schedule, node, task, { from, to }, chance, false);
};

/** Minutes after it may begin within which washing-up is looked for first, so that the vessel is free again. */
const soon = [10, 30, 90] as const;
const whenever: readonly number[] = [];

/** Of washing-up, the windows to look in before any; where chance has a say, now and then it is left for later. */
const soonAfter = ({ inUse, model }: Schedule, node: number, chance: Chance | null): readonly number[] => {
  const ends = (inUse.of[node] as readonly number[]).some((s) => model.stays[s]?.to === node);
  return ends && (chance === null || chance.below(3) > 0) ? soon : whenever;
};

/** Puts a node at the latest spot that leaves everything else a start; false when there is none. */
export const putLatest = (
  schedule: Schedule,
  node: number,
  chance: Chance | null,
  before: number | null = null,
): boolean => {
  let to = before;
  for (let i = 0; i < mostSqueezes; i++) {
    const spot = latestSpot(schedule, node, chance, to);
    if (!spot) return false;
    if (putAt(schedule, node, spot)) return true;
    to = spot.start - 1;
  }
  return false;
};

const trail = emptyTrail();

/** Puts a node at a free spot, if that leaves everything else a start. */
export const putAt = (schedule: Schedule, node: number, spot: Spot): boolean => {
  put(schedule, node, spot.start, spot.cook, spot.oven);
  if (narrow(schedule, node, trail)) {
    trail.nodes.length = 0;
    trail.earliest.length = 0;
    trail.latest.length = 0;
    return true;
  }
  undo(schedule, trail);
  take(schedule, node);
  return false;
};

/** The part of a shift that is filled with work that could as well be done in another, so that a slip has somewhere to go. */
const comfortable = 0.75;

/** Work by hand that no quality hangs on. */
const isPatient = (task: Node): boolean =>
  !task.finishing && task.weight === 0 && task.coldWeight === 0 && task.handsMinutes > 0;

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
  if (task.finishing || task.weight > 0 || task.handsFrom < 0) return latest;
  let to = latest;
  for (let s = model.calm.length - 1; s >= 0; s--) {
    const calm = model.calm[s];
    if (calm && to + task.handsTo > calm.from && to + task.handsFrom < calm.to) to = calm.from - task.handsTo;
  }
  return to;
};

const nobody: readonly number[] = [-1];

/** Who may do a node: all that know how to, or whoever has another task of its group. */
export const cooksOf = (schedule: Schedule, node: number, task: Node): readonly number[] => {
  if (task.attended.length === 0) return nobody;
  const group = schedule.groupOf[node] as number;
  const cook = group < 0 ? -1 : (schedule.groupCook[group] as number);
  if (cook < 0) return task.cooks;
  return task.cooks.includes(cook) ? [cook] : [];
};

export const ovensOf = (task: Node): readonly number[] => (task.oven.length > 0 ? task.ovens : nobody);

const latestIn = (
  schedule: Schedule,
  node: number,
  task: Node,
  window: Span,
  chance: Chance | null,
  spread: boolean,
): Spot | null => {
  let best: Spot[] = [];
  let bestStart = window.from;
  for (const cook of cooksOf(schedule, node, task)) {
    for (const oven of ovensOf(task)) {
      const from = oven < 0 ? bestStart : Math.max(bestStart, task.ovenReady[oven] ?? 0);
      const start = latestStart(schedule, node, task, cook, oven, from, window.to, spread);
      if (start === nowhere) continue;
      const spot = { start, cook, oven };
      if (start > bestStart || best.length === 0) best = [spot];
      else best.push(spot);
      bestStart = start;
    }
  }
  if (best.length <= 1) return best[0] ?? null;
  if (chance) return best[chance.below(best.length)] ?? null;
  return fittest(schedule, task, best);
};

/** The latest start inside a window for a given cook and oven; `nowhere` when there is none. */
const latestStart = (
  schedule: Schedule,
  node: number,
  task: Node,
  cook: number,
  oven: number,
  from: number,
  latest: number,
  spread: boolean,
): number => {
  const starts = task.starts[Math.max(cook, 0)] ?? [];
  let to = latest;
  for (let jumps = 0; jumps < mostJumps; jumps++) {
    const start = latestOf(starts, to);
    if (start === null || start < from) return nowhere;
    const crowded = spread ? crowdedShift(schedule, task, cook, start) : null;
    if (crowded !== null) {
      to = (schedule.model.shifts[cook]?.[crowded]?.from ?? 0) - (task.attended[0]?.offset ?? 0) - 1;
      continue;
    }
    const clear = clearBefore(schedule, node, start, cook, oven);
    if (clear === start) return start;
    to = clear;
  }
  return nowhere;
};

const fittest = (schedule: Schedule, task: Node, spots: readonly Spot[]): Spot | null => {
  const { nodes, cooks } = schedule.model;
  const load = cooks.map(() => 0);
  const dish = cooks.map(() => 0);
  for (let n = 0; n < schedule.model.taskCount; n++) {
    const cook = schedule.cook[n] as number;
    const other = nodes[n];
    if (cook < 0 || !other) continue;
    load[cook] = (load[cook] ?? 0) + other.handsMinutes;
    if (other.dish === task.dish) dish[cook] = (dish[cook] ?? 0) + 1;
  }
  const warm = schedule.baking.map(
    (list) => list.filter((b) => task.oven.some((t) => t.celsius === b.celsius)).length,
  );
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
export const compareRanks = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};
