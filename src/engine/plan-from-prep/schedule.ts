import { type Kin, kinOf } from "./kin.ts";
import type { Paths } from "./longest-paths.ts";
import type { Model, Stretch } from "./model.ts";
import { beginStays, type InUse, moveStays, nothingInUse } from "./stays.ts";

/** Where a node stands; cook and oven are -1 when it has none. */
export type Spot = { readonly start: number; readonly cook: number; readonly oven: number };

/** The start of a node that stands nowhere. */
export const nowhere = -1;
/** Amounts are counted in thousandths, so that litres add up exactly. */
const fine = 1000;

/** One use of an oven in the schedule: [from, to). */
export type Baking = {
  readonly node: number;
  readonly from: number;
  readonly to: number;
  readonly celsius: number;
};

type Amounted = Stretch & { readonly amount: number };

/** What a node takes, in thousandths. */
export type Take = {
  readonly resources: readonly (Amounted & { readonly resource: number })[];
  readonly oven: readonly (Amounted & { readonly celsius: number })[];
};

/** A schedule in the making: where nodes stand, and how full everything is at every minute. Changed in place. */
export type Schedule = {
  readonly model: Model;
  readonly paths: Paths;
  readonly kin: Kin;
  /** Start of each node; `nowhere` when it has none. */
  readonly start: Int32Array;
  readonly length: Int32Array;
  readonly cook: Int16Array;
  readonly oven: Int16Array;
  /** Starts that lags and shifts leave each node, given where the others stand. */
  readonly earliest: Int32Array;
  readonly latest: Int32Array;
  /** 1 for a task that found no place and is let go: it bounds nothing. */
  readonly gone: Uint8Array;
  /** Minutes each course lands after it is due. */
  readonly slip: Int32Array;
  readonly takes: readonly Take[];
  readonly room: { readonly resources: readonly number[]; readonly shelves: readonly number[] };
  readonly cookLoad: readonly Int32Array[];
  readonly resourceLoad: readonly Int32Array[];
  readonly shelfLoad: readonly Int32Array[];
  readonly baking: Baking[][];
  readonly inUse: InUse;
  /** Hands-on minutes in each shift of each cook. */
  readonly shiftHands: readonly Int32Array[];
  /** The group of tasks that one cook does, for each node; -1 for none. How many of it stand, and with whom. */
  readonly groupOf: Int32Array;
  readonly groupStands: Int32Array;
  readonly groupCook: Int32Array;
};

/** A schedule with nothing in it but the landings, each at its due time. */
export const emptySchedule = (model: Model, paths: Paths): Schedule => {
  const count = model.nodes.length;
  const minutes = model.horizon + 1;
  const groupOf = new Int32Array(count).fill(-1);
  model.sameCook.forEach((group, g) => {
    for (const n of group) groupOf[n] = g;
  });
  const up = (amount: number): number => Math.ceil(amount * fine - 1e-6);
  const down = (amount: number): number => Math.floor(amount * fine + 1e-6);
  const schedule: Schedule = {
    model,
    paths,
    kin: kinOf(model, paths),
    start: new Int32Array(count).fill(nowhere),
    length: Int32Array.from(model.nodes, (node) => node.length),
    cook: new Int16Array(count).fill(-1),
    oven: new Int16Array(count).fill(-1),
    earliest: new Int32Array(count),
    latest: new Int32Array(count),
    gone: new Uint8Array(count),
    slip: new Int32Array(model.goals.length),
    takes: model.nodes.map((node) => ({
      resources: node.resources.map((r) => ({ ...r, amount: up(r.amount) })),
      oven: node.oven.map((o) => ({ ...o, amount: up(o.amount) })),
    })),
    room: {
      resources: model.capacity.resources.map(down),
      shelves: model.capacity.shelves.map(down),
    },
    cookLoad: model.cooks.map(() => new Int32Array(minutes)),
    resourceLoad: model.capacity.resources.map(() => new Int32Array(minutes)),
    shelfLoad: model.capacity.shelves.map(() => new Int32Array(minutes)),
    baking: model.capacity.shelves.map(() => []),
    inUse: nothingInUse(model, paths, fine),
    shiftHands: model.shifts.map((shifts) => new Int32Array(shifts.length)),
    groupOf,
    groupStands: new Int32Array(model.sameCook.length),
    groupCook: new Int32Array(model.sameCook.length).fill(-1),
  };
  for (let g = 0; g < model.goals.length; g++) setSlip(schedule, g, 0);
  beginStays(schedule);
  return schedule;
};

/** Where a node stands; null when nowhere. */
export const spotOf = (schedule: Schedule, node: number): Spot | null => {
  const start = schedule.start[node] as number;
  if (start === nowhere) return null;
  return { start, cook: schedule.cook[node] as number, oven: schedule.oven[node] as number };
};

/** Moves a course's landing. Windows are then no longer right: they must be opened anew. */
export const setSlip = (schedule: Schedule, goal: number, slip: number): void => {
  const node = schedule.model.landing[goal];
  const due = schedule.model.due[goal];
  if (node === undefined || due === undefined) return;
  schedule.slip[goal] = slip;
  schedule.start[node] = due + slip;
};

/** Puts a node down; its place must be free. */
export const put = (schedule: Schedule, node: number, start: number, cook: number, oven: number): void => {
  schedule.start[node] = start;
  schedule.cook[node] = cook;
  schedule.oven[node] = oven;
  schedule.gone[node] = 0;
  load(schedule, node, 1);
  for (const o of (schedule.takes[node] as Take).oven) {
    const from = start + o.offset;
    schedule.baking[oven]?.push({ node, from, to: from + o.length, celsius: o.celsius });
  }
  moveStays(schedule, node);
};

/** Takes a node out. Windows are then too narrow until they are opened anew. */
export const take = (schedule: Schedule, node: number): void => {
  if (schedule.start[node] === nowhere) return;
  load(schedule, node, -1);
  const list = schedule.baking[schedule.oven[node] as number];
  if (list) {
    for (let i = list.length - 1; i >= 0; i--) if (list[i]?.node === node) list.splice(i, 1);
  }
  schedule.start[node] = nowhere;
  schedule.cook[node] = -1;
  schedule.oven[node] = -1;
  moveStays(schedule, node);
};

const load = (schedule: Schedule, node: number, sign: 1 | -1): void => {
  const task = schedule.model.nodes[node];
  if (!task) return;
  const start = schedule.start[node] as number;
  const cook = schedule.cook[node] as number;
  const oven = schedule.oven[node] as number;
  const takes = schedule.takes[node] as Take;
  for (const a of task.attended) {
    add(schedule.cookLoad[cook], start + a.offset, a.length, sign * a.units);
    if (!a.hands) continue;
    const at = start + a.offset;
    const shift = shiftAt(schedule.model.shifts[cook] ?? [], at);
    const own = schedule.shiftHands[cook];
    if (own && shift >= 0) own[shift] = (own[shift] as number) + sign * a.length;
  }
  for (const r of takes.resources) {
    add(schedule.resourceLoad[r.resource], start + r.offset, r.length, sign * r.amount);
  }
  for (const o of takes.oven) add(schedule.shelfLoad[oven], start + o.offset, o.length, sign * o.amount);
  const group = schedule.groupOf[node] as number;
  if (group >= 0 && cook >= 0) {
    const stands = (schedule.groupStands[group] as number) + sign;
    schedule.groupStands[group] = stands;
    schedule.groupCook[group] = stands > 0 ? cook : -1;
  }
};

const shiftAt = (shifts: readonly { readonly from: number; readonly to: number }[], at: number): number => {
  for (let s = 0; s < shifts.length; s++) {
    const shift = shifts[s];
    if (shift && shift.from <= at && at < shift.to) return s;
  }
  return -1;
};

const add = (profile: Int32Array | undefined, from: number, length: number, amount: number): void => {
  if (!profile) return;
  for (let minute = from; minute < from + length; minute++) {
    profile[minute] = (profile[minute] as number) + amount;
  }
};
