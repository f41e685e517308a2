import { noPath, type Paths } from "./longest-paths.ts";
import type { Model, Node, Starts, Stretch } from "./model.ts";
import { changeBetween } from "./oven-clash.ts";

/** Where a node stands; cook and oven are -1 when it has none. */
export type Spot = { readonly start: number; readonly cook: number; readonly oven: number };

/** One use of an oven in the schedule: [from, to). */
export type Baking = {
  readonly node: number;
  readonly from: number;
  readonly to: number;
  readonly celsius: number;
};

/** A schedule in the making: spots, and how full everything is at every minute. Changed in place by `put` and `take`. */
export type Schedule = {
  readonly model: Model;
  readonly paths: Paths;
  readonly spots: (Spot | null)[];
  /** Minutes each course lands after it is due. */
  readonly slip: number[];
  readonly cookLoad: readonly Uint8Array[];
  readonly resourceLoad: readonly Float64Array[];
  readonly shelfLoad: readonly Uint8Array[];
  readonly baking: Baking[][];
  /** Hands-on minutes in each shift of each cook. */
  readonly shiftHands: readonly number[][];
};

/** A schedule with nothing in it but the landings, each at its due time plus its slip. */
export const emptySchedule = (model: Model, paths: Paths): Schedule => {
  const schedule: Schedule = {
    model,
    paths,
    spots: model.nodes.map(() => null),
    slip: model.goals.map(() => 0),
    cookLoad: model.cooks.map(() => new Uint8Array(model.horizon + 1)),
    resourceLoad: model.capacity.resources.map(() => new Float64Array(model.horizon + 1)),
    shelfLoad: model.capacity.shelves.map(() => new Uint8Array(model.horizon + 1)),
    baking: model.capacity.shelves.map(() => []),
    shiftHands: model.shifts.map((shifts) => shifts.map(() => 0)),
  };
  for (let g = 0; g < model.goals.length; g++) setSlip(schedule, g, 0);
  return schedule;
};

/** Moves a course's landing. The tasks that lags bind to it must have been taken out before. */
export const setSlip = (schedule: Schedule, goal: number, slip: number): void => {
  const node = schedule.model.landing[goal];
  const due = schedule.model.due[goal];
  if (node === undefined || due === undefined) return;
  schedule.slip[goal] = slip;
  schedule.spots[node] = { start: due + slip, cook: -1, oven: -1 };
};

export const put = (schedule: Schedule, node: number, spot: Spot): void => {
  schedule.spots[node] = spot;
  load(schedule, node, spot, 1);
  for (const o of schedule.model.nodes[node]?.oven ?? []) {
    const from = spot.start + o.offset;
    schedule.baking[spot.oven]?.push({ node, from, to: from + o.length, celsius: o.celsius });
  }
};

export const take = (schedule: Schedule, node: number): void => {
  const spot = schedule.spots[node];
  if (!spot) return;
  schedule.spots[node] = null;
  load(schedule, node, spot, -1);
  const list = schedule.baking[spot.oven];
  if (list) {
    for (let i = list.length - 1; i >= 0; i--) if (list[i]?.node === node) list.splice(i, 1);
  }
};

const load = (schedule: Schedule, node: number, spot: Spot, sign: 1 | -1): void => {
  const { model } = schedule;
  const task = model.nodes[node];
  if (!task) return;
  for (const a of task.attended) {
    add(schedule.cookLoad[spot.cook], spot.start + a.offset, a.length, sign * a.units);
    if (!a.hands) continue;
    const at = spot.start + a.offset;
    const shift = model.shifts[spot.cook]?.findIndex((s) => s.from <= at && at < s.to) ?? -1;
    const own = schedule.shiftHands[spot.cook];
    if (own && shift >= 0) own[shift] = (own[shift] ?? 0) + sign * a.length;
  }
  for (const r of task.resources) {
    add(schedule.resourceLoad[r.resource], spot.start + r.offset, r.length, sign * r.amount);
  }
  for (const o of task.oven) {
    add(schedule.shelfLoad[spot.oven], spot.start + o.offset, o.length, sign * o.amount);
  }
};

const add = (
  profile: Uint8Array | Float64Array | undefined,
  from: number,
  length: number,
  amount: number,
): void => {
  if (!profile) return;
  for (let minute = from; minute < from + length; minute++) {
    profile[minute] = (profile[minute] ?? 0) + amount;
  }
};

/** Starts that lags to the nodes already placed leave open: [from, to]; empty when from > to. */
export const windowOf = (
  schedule: Schedule,
  node: number,
): { readonly from: number; readonly to: number } => {
  const { paths, model, spots } = schedule;
  let from = 0;
  let to = model.horizon - (model.nodes[node]?.length ?? 0);
  for (const other of paths.kin(node)) {
    const spot = spots[other];
    if (!spot || other === node) continue;
    const after = paths.least(other, node);
    if (after > noPath / 2 && spot.start + after > from) from = spot.start + after;
    const before = paths.least(node, other);
    if (before > noPath / 2 && spot.start - before < to) to = spot.start - before;
  }
  return { from, to };
};

/**
 * A start at or below the given one that leaves every task still to be placed some start that a shift allows;
 * it says nothing of whether the hands are free then. Null when there is none above `least`.
 */
export const leavesRoom = (schedule: Schedule, node: number, start: number, least: number): number | null => {
  const { paths, model, spots } = schedule;
  let at = start;
  for (let moved = true; moved; ) {
    moved = false;
    for (const other of paths.kin(node)) {
      if (other === node || spots[other]) continue;
      const after = paths.least(node, other);
      if (after <= noPath / 2) continue;
      const before = paths.least(other, node);
      if (before <= noPath / 2) continue;
      const open = latestOf(model.nodes[other]?.anyStarts ?? [], at - before);
      if (open === null) return null;
      if (open < at + after) {
        at = open - after;
        moved = true;
        if (at < least) return null;
      }
    }
  }
  return at;
};

/** The latest member of a start set up to a minute. */
export const latestOf = (starts: Starts, to: number): number | null => {
  for (let i = starts.length - 1; i >= 0; i--) {
    const interval = starts[i];
    if (interval && interval.from <= to) return Math.min(interval.to, to);
  }
  return null;
};

/** What stands in the way of a spot: at which minute, and what is full there. */
export type Clash = {
  /** The next earlier start at which this clash is gone. */
  readonly earlier: number;
  /** The next later start at which this clash is gone. */
  readonly later: number;
  readonly minute: number;
  readonly on:
    | { readonly kind: "cook"; readonly cook: number }
    | { readonly kind: "resource"; readonly resource: number }
    | { readonly kind: "shelf"; readonly oven: number }
    | { readonly kind: "oven"; readonly oven: number; readonly node: number; readonly change: number };
};

/** The first thing that keeps a node from a spot, other than shifts and lags; null when it fits. */
export const clashAt = (schedule: Schedule, node: number, spot: Spot): Clash | null => {
  const { model } = schedule;
  const task = model.nodes[node];
  if (!task) return null;
  const { start, cook, oven } = spot;
  for (const a of task.attended) {
    const minute = fullMinute(
      schedule.cookLoad[cook],
      start + a.offset,
      a.length,
      model.capacity.cook - a.units,
    );
    if (minute >= 0) return clearOf(minute, a, { kind: "cook", cook });
  }
  for (const r of task.resources) {
    const room = (model.capacity.resources[r.resource] ?? 0) - r.amount + 1e-6;
    const minute = fullMinute(schedule.resourceLoad[r.resource], start + r.offset, r.length, room);
    if (minute >= 0) return clearOf(minute, r, { kind: "resource", resource: r.resource });
  }
  for (const o of task.oven) {
    const room = (model.capacity.shelves[oven] ?? 0) - o.amount;
    const minute = fullMinute(schedule.shelfLoad[oven], start + o.offset, o.length, room);
    if (minute >= 0) return clearOf(minute, o, { kind: "shelf", oven });
    for (const other of schedule.baking[oven] ?? []) {
      const change = other.node === node ? 0 : changeBetween(model, o.celsius, other.celsius);
      const from = start + o.offset;
      if (change === 0 || from >= other.to + change || from + o.length + change <= other.from) continue;
      return {
        earlier: other.from - change - o.length - o.offset,
        later: other.to + change - o.offset,
        minute: Math.max(from, other.from),
        on: { kind: "oven", oven, node: other.node, change },
      };
    }
  }
  return null;
};

const clearOf = (
  minute: number,
  stretch: { readonly offset: number; readonly length: number },
  on: Clash["on"],
): Clash => ({
  earlier: minute - stretch.offset - stretch.length,
  later: minute + 1 - stretch.offset,
  minute,
  on,
});

/** The first minute of a stretch at which more than `room` is taken already; -1 when there is none. */
const fullMinute = (
  profile: Uint8Array | Float64Array | undefined,
  from: number,
  length: number,
  room: number,
): number => {
  if (!profile) return from;
  for (let minute = from; minute < from + length; minute++) {
    if ((profile[minute] ?? 0) > room) return minute;
  }
  return -1;
};

/** Placed nodes that take part in a clash. */
export const inTheWay = (schedule: Schedule, clash: Clash): readonly number[] => {
  const { on, minute } = clash;
  if (on.kind === "oven") return [on.node];
  const { model, spots } = schedule;
  const found: number[] = [];
  for (let node = 0; node < model.taskCount; node++) {
    const spot = spots[node];
    const task = model.nodes[node];
    if (!spot || !task) continue;
    const there = takesPart(on, task, spot, minute - spot.start);
    if (there) found.push(node);
  }
  return found;
};

const takesPart = (on: Clash["on"], task: Node, spot: Spot, at: number): boolean => {
  switch (on.kind) {
    case "cook":
      return spot.cook === on.cook && task.attended.length > 0 && covered(task.attended, at);
    case "resource":
      for (const r of task.resources) {
        if (r.resource === on.resource && r.offset <= at && at < r.offset + r.length) return true;
      }
      return false;
    case "shelf":
      return spot.oven === on.oven && covered(task.oven, at);
    case "oven":
      return false;
  }
};

const covered = (stretches: readonly Stretch[], at: number): boolean => {
  for (const s of stretches) if (s.offset <= at && at < s.offset + s.length) return true;
  return false;
};

/** A copy of where everything stands, to come back to. */
export type Memory = { readonly spots: readonly (Spot | null)[]; readonly slip: readonly number[] };

export const remember = (schedule: Schedule): Memory => ({
  spots: [...schedule.spots],
  slip: [...schedule.slip],
});

/** Puts everything back where the memory has it. */
export const restore = (schedule: Schedule, memory: Memory): void => {
  const { model, spots } = schedule;
  const moved: number[] = [];
  for (let node = 0; node < model.taskCount; node++) {
    if (spots[node] === memory.spots[node]) continue;
    moved.push(node);
    take(schedule, node);
  }
  memory.slip.forEach((slip, g) => {
    if (schedule.slip[g] !== slip) setSlip(schedule, g, slip);
  });
  for (const node of moved) {
    const spot = memory.spots[node];
    if (spot) put(schedule, node, spot);
  }
};
