import type { Node, Stretch } from "./model.ts";
import { changeBetween, mayShare } from "./oven-clash.ts";
import { nowhere, type Schedule, type Take } from "./schedule.ts";
import { holdersAt, overfullAt } from "./stays.ts";

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
export const clashAt = (
  schedule: Schedule,
  node: number,
  start: number,
  cook: number,
  oven: number,
): Clash | null => {
  const { model } = schedule;
  const task = model.nodes[node];
  if (!task) return null;
  const takes = schedule.takes[node] as Take;
  for (const a of task.attended) {
    const minute = fullMinute(
      schedule.cookLoad[cook],
      start + a.offset,
      a.length,
      model.capacity.cook - a.units,
    );
    if (minute >= 0) return clearOf(minute, a, { kind: "cook", cook });
  }
  for (const r of takes.resources) {
    const room = (schedule.room.resources[r.resource] as number) - r.amount;
    const minute = fullMinute(schedule.resourceLoad[r.resource], start + r.offset, r.length, room);
    if (minute >= 0) return clearOf(minute, r, { kind: "resource", resource: r.resource });
  }
  for (const o of takes.oven) {
    const room = (schedule.room.shelves[oven] as number) - o.amount;
    const minute = fullMinute(schedule.shelfLoad[oven], start + o.offset, o.length, room);
    if (minute >= 0) return clearOf(minute, o, { kind: "shelf", oven });
    for (const other of schedule.baking[oven] ?? []) {
      if (other.node === node) continue;
      if (mayShare(model, other.celsius, o.celsius)) continue;
      const after = changeBetween(model, other.celsius, o.celsius);
      const before = changeBetween(model, o.celsius, other.celsius);
      const from = start + o.offset;
      if (from >= other.to + after || from + o.length + before <= other.from) continue;
      return {
        earlier: other.from - before - o.length - o.offset,
        later: other.to + after - o.offset,
        minute: Math.max(from, other.from),
        on: { kind: "oven", oven, node: other.node, change: from < other.from ? before : after },
      };
    }
  }
  const full = overfullAt(schedule, node, start);
  if (full === null) return null;
  const { resource, minute, earlier, later } = full;
  return { earlier, later, minute, on: { kind: "resource", resource } };
};

const clearOf = (minute: number, stretch: Stretch, on: Clash["on"]): Clash => ({
  earlier: minute - stretch.offset - stretch.length,
  later: minute + 1 - stretch.offset,
  minute,
  on,
});

/** The first minute of a stretch at which more than `room` is taken already; -1 when there is none. */
const fullMinute = (profile: Int32Array | undefined, from: number, length: number, room: number): number => {
  if (!profile) return from;
  for (let minute = from; minute < from + length; minute++) {
    if ((profile[minute] as number) > room) return minute;
  }
  return -1;
};

/**
 * A start at or before the given one at which nothing clashes, by jumping over what is in the way; `least - 1` or less
 * when there is none. Shifts and lags are not looked at: each jump lands at most one clash further back.
 */
export const clearBefore = (
  schedule: Schedule,
  node: number,
  start: number,
  cook: number,
  oven: number,
): number => {
  const { model } = schedule;
  const task = model.nodes[node] as Node;
  const takes = schedule.takes[node] as Take;
  for (const a of task.attended) {
    const minute = lastFull(
      schedule.cookLoad[cook],
      start + a.offset,
      a.length,
      model.capacity.cook - a.units,
    );
    if (minute !== nowhere)
      return lastClear(schedule.cookLoad[cook], minute, a, model.capacity.cook - a.units);
  }
  for (const r of takes.resources) {
    const room = (schedule.room.resources[r.resource] as number) - r.amount;
    const load = schedule.resourceLoad[r.resource];
    const minute = lastFull(load, start + r.offset, r.length, room);
    if (minute !== nowhere) return lastClear(load, minute, r, room);
  }
  for (const o of takes.oven) {
    const room = (schedule.room.shelves[oven] as number) - o.amount;
    const minute = lastFull(schedule.shelfLoad[oven], start + o.offset, o.length, room);
    if (minute !== nowhere) return lastClear(schedule.shelfLoad[oven], minute, o, room);
    const from = start + o.offset;
    for (const other of schedule.baking[oven] as Schedule["baking"][number]) {
      if (other.node === node) continue;
      if (mayShare(model, other.celsius, o.celsius)) continue;
      const after = changeBetween(model, other.celsius, o.celsius);
      if (from >= other.to + after) continue;
      const before = changeBetween(model, o.celsius, other.celsius);
      if (from + o.length + before > other.from) return other.from - before - o.length - o.offset;
    }
  }
  return overfullAt(schedule, node, start)?.earlier ?? start;
};

/** The last minute of a stretch at which more than `room` is taken; `nowhere` when there is none. */
const lastFull = (profile: Int32Array | undefined, from: number, length: number, room: number): number => {
  if (!profile) return from;
  for (let minute = from + length - 1; minute >= from; minute--) {
    if ((profile[minute] as number) > room) return minute;
  }
  return nowhere;
};

/** The latest start that ends the stretch before a full minute, and before others that leave it too little time. */
const lastClear = (profile: Int32Array | undefined, full: number, stretch: Stretch, room: number): number => {
  let end = full;
  let minute = full - 1;
  while (profile && minute >= 0 && minute >= end - stretch.length) {
    if ((profile[minute] as number) > room) end = minute;
    minute -= 1;
  }
  return end - stretch.length - stretch.offset;
};

/** Placed nodes that take part in a clash. */
export const inTheWay = (schedule: Schedule, clash: Clash): readonly number[] => {
  const { on, minute } = clash;
  if (on.kind === "oven") return [on.node];
  const { model, start, length } = schedule;
  const found: number[] = [];
  for (let node = 0; node < model.taskCount; node++) {
    const at = start[node] as number;
    if (at === nowhere || minute < at || minute >= at + (length[node] as number)) continue;
    const task = model.nodes[node] as Node;
    if (takesPart(schedule, on, node, task, minute - at)) found.push(node);
  }
  if (on.kind === "resource") holdersAt(schedule, on.resource, minute, found);
  return found;
};

const takesPart = (schedule: Schedule, on: Clash["on"], node: number, task: Node, at: number): boolean => {
  switch (on.kind) {
    case "cook":
      return schedule.cook[node] === on.cook && covered(task.attended, at);
    case "resource":
      for (const r of task.resources) {
        if (r.resource === on.resource && r.offset <= at && at < r.offset + r.length) return true;
      }
      return false;
    case "shelf":
      return schedule.oven[node] === on.oven && covered(task.oven, at);
    case "oven":
      return false;
  }
};

const covered = (stretches: readonly Stretch[], at: number): boolean => {
  for (const s of stretches) if (s.offset <= at && at < s.offset + s.length) return true;
  return false;
};
