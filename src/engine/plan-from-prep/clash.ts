import type { Node, Stretch } from "./model.ts";
import { changeBetween } from "./oven-clash.ts";
import type { Schedule, Spot } from "./schedule.ts";

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
