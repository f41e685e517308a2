import type { Paths } from "./longest-paths.ts";
import type { Model } from "./model.ts";

/** The vessels in use in a schedule, and from when to when: changed as their tasks are put and taken. */
export type InUse = {
  /** Stays that each task begins or ends; none for most. */
  readonly of: readonly (readonly number[])[];
  /** Amounts in thousandths. */
  readonly amount: Int32Array;
  /** [from, to) of each stay as it is counted now; empty when none of its tasks stands. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Least minutes from the start of its first task to that of its last; 0 when it has only one. */
  readonly between: Int32Array;
};

/** What of a schedule it takes to count vessels. A start below 0 is none. */
type Counted = {
  readonly model: Model;
  readonly start: Int32Array;
  readonly length: Int32Array;
  readonly room: { readonly resources: readonly number[] };
  readonly resourceLoad: readonly Int32Array[];
  readonly inUse: InUse;
};

/** Tasks at which a stay ends: washing-up, which waits for everything before it and is in nobody's way. */
export const washingsOf = (model: Model): ReadonlySet<number> =>
  new Set(model.stays.flatMap((stay) => (stay.to < 0 ? [] : [stay.to])));

export const nothingInUse = (model: Model, paths: Paths, fine: number): InUse => {
  const of: number[][] = model.nodes.map(() => []);
  model.stays.forEach((stay, s) => {
    for (const node of new Set([stay.from, stay.to])) if (node >= 0) of[node]?.push(s);
  });
  return {
    of,
    amount: Int32Array.from(model.stays, (stay) => Math.ceil(stay.amount * fine - 1e-6)),
    from: new Int32Array(model.stays.length),
    to: new Int32Array(model.stays.length),
    between: Int32Array.from(model.stays, ({ from, to }) =>
      from < 0 || to < 0 ? 0 : Math.max(0, paths.least(from, to)),
    ),
  };
};

/** Counts what was in use since the beginning. */
export const beginStays = (schedule: Counted): void => {
  schedule.model.stays.forEach((stay, s) => {
    if (stay.from < 0) recount(schedule, s);
  });
};

/** Brings the vessels of a task up to date with where it stands. */
export const moveStays = (schedule: Counted, node: number): void => {
  for (const s of schedule.inUse.of[node] as readonly number[]) recount(schedule, s);
};

const recount = (schedule: Counted, s: number): void => {
  const { model, inUse, resourceLoad } = schedule;
  const stay = model.stays[s];
  if (!stay) return;
  const load = resourceLoad[stay.resource] as Int32Array;
  const amount = inUse.amount[s] as number;
  const begins = stay.from < 0 ? -1 : (schedule.start[stay.from] as number);
  const ends = stay.to < 0 ? -1 : (schedule.start[stay.to] as number);
  const was = { from: inUse.from[s] as number, to: inUse.to[s] as number };
  const { from, to } = stretchOf(schedule, s, begins, ends);
  if (from < was.to && was.from < to) {
    // Most often one end moves and the rest stays.
    add(load, was.from, Math.min(was.to, from), -amount);
    add(load, Math.max(was.from, to), was.to, -amount);
    add(load, from, Math.min(to, was.from), amount);
    add(load, Math.max(from, was.to), to, amount);
  } else {
    add(load, was.from, was.to, -amount);
    add(load, from, to, amount);
  }
  inUse.from[s] = from;
  inUse.to[s] = to;
};

const add = (load: Int32Array, from: number, to: number, amount: number): void => {
  for (let m = from; m < to; m++) load[m] = (load[m] as number) + amount;
};

/**
 * From when to when a vessel is in use, with its tasks at these starts (-1: nowhere). While only one of them stands, that
 * is as long as it must at least be: a part of what it will be when the other one does.
 */
const stretchOf = (
  { model, inUse, length, resourceLoad }: Counted,
  s: number,
  begins: number,
  ends: number,
): { readonly from: number; readonly to: number } => {
  const stay = model.stays[s];
  if (!stay) return { from: 0, to: 0 };
  const last = (resourceLoad[stay.resource] as Int32Array).length;
  const between = inUse.between[s] as number;
  const long = stay.to < 0 ? 0 : (length[stay.to] as number);
  if (begins < 0 && stay.from >= 0) {
    return ends < 0 ? { from: 0, to: 0 } : { from: Math.max(0, ends - between), to: ends + long };
  }
  const from = Math.max(0, begins);
  if (stay.to < 0) return { from, to: last };
  if (ends >= 0) return { from, to: Math.max(from, ends + long) };
  if (stay.from < 0) return { from, to: from };
  const least = Math.max(length[stay.from] as number, between > 0 ? between + long : 0);
  return { from, to: Math.min(last, from + least) };
};

/** Vessels that there are not enough of, if a task stood there: the jump that clears them, back or forth. */
export type Overfull = {
  readonly resource: number;
  readonly minute: number;
  readonly earlier: number;
  readonly later: number;
};

/** What a task that stands nowhere would take too many of at a start; null when there are enough. */
export const overfullAt = (schedule: Counted, node: number, at: number): Overfull | null => {
  const stays = schedule.inUse.of[node] as readonly number[];
  let found: Overfull | null = null;
  for (const s of stays) {
    const full = overfullIn(schedule, s, node, at, stays);
    if (full && (found === null || full.earlier < found.earlier)) found = full;
  }
  return found;
};

const overfullIn = (
  schedule: Counted,
  s: number,
  node: number,
  at: number,
  own: readonly number[],
): Overfull | null => {
  const { model, inUse, start, length } = schedule;
  const stay = model.stays[s];
  if (!stay) return null;
  const { resource } = stay;
  const other = node === stay.from ? stay.to : stay.from;
  const stands = other < 0 ? -1 : (start[other] as number);
  const begins = node === stay.from ? at : stands;
  const ends = node === stay.to ? at : stands;
  const { from, to } = stretchOf(schedule, s, begins, ends);
  const load = schedule.resourceLoad[resource] as Int32Array;
  const amount = inUse.amount[s] as number;
  const room = (schedule.room.resources[resource] as number) - amount;
  const wasFrom = inUse.from[s] as number;
  const wasTo = inUse.to[s] as number;
  const others = besides(schedule, s, node, at, own);
  const isFull = (m: number): boolean => {
    let taken = (load[m] as number) - (m >= wasFrom && m < wasTo ? amount : 0);
    for (const o of others) {
      if (m >= o.from && m < o.to) taken += o.amount;
      if (m >= o.wasFrom && m < o.wasTo) taken -= o.amount;
    }
    return taken > room;
  };
  let first = from;
  while (first < to && !isFull(first)) first++;
  if (first >= to) return null;
  let last = to - 1;
  while (last > first && !isFull(last)) last--;
  const fixed = other < 0 || other === node || stands >= 0;
  // While the other end is open the whole stretch moves along; else only this end does.
  if (!fixed) return { resource, minute: first, earlier: at - (to - last), later: at + (last + 1 - from) };
  if (node === stay.from) return { resource, minute: first, earlier: -1, later: last + 1 };
  return { resource, minute: first, earlier: first - (length[node] as number), later: model.horizon + 1 };
};

type Besides = {
  readonly amount: number;
  readonly from: number;
  readonly to: number;
  readonly wasFrom: number;
  readonly wasTo: number;
};
const nothing: readonly Besides[] = [];

/** Other stays of the same task on the same vessels, which begin or end with it: as they are counted, and would be. */
const besides = (
  schedule: Counted,
  s: number,
  node: number,
  at: number,
  own: readonly number[],
): readonly Besides[] => {
  if (own.length === 1) return nothing;
  const { model, inUse, start } = schedule;
  const resource = model.stays[s]?.resource;
  const startOf = (n: number): number => (n === node ? at : n < 0 ? -1 : (start[n] as number));
  return own.flatMap((o): readonly Besides[] => {
    const stay = model.stays[o];
    if (o === s || stay === undefined || stay.resource !== resource) return nothing;
    const { from, to } = stretchOf(schedule, o, startOf(stay.from), startOf(stay.to));
    const amount = inUse.amount[o] as number;
    return [{ amount, from, to, wasFrom: inUse.from[o] as number, wasTo: inUse.to[o] as number }];
  });
};

/** Adds the tasks that begin or end what stands in vessels of a kind at a minute. */
export const holdersAt = (schedule: Counted, resource: number, minute: number, found: number[]): void => {
  const { model, inUse, start } = schedule;
  for (let s = 0; s < model.stays.length; s++) {
    const stay = model.stays[s];
    if (
      stay?.resource !== resource ||
      (inUse.from[s] as number) > minute ||
      minute >= (inUse.to[s] as number)
    )
      continue;
    for (const node of [stay.from, stay.to])
      if (node >= 0 && (start[node] as number) >= 0 && !found.includes(node)) found.push(node);
  }
};
