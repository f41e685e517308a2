import type { Paths } from "./longest-paths.ts";
import type { Model } from "./model.ts";

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
