import type { Prep, Segment, Task } from "../model/prep.ts";

/** A part of something in use: [from, to). */
type Use = { readonly from: number; readonly to: number; readonly amount: number };
type Baking = Use & { readonly celsius: number; readonly task: string };

/** What the tasks placed so far take. */
export type Taken = {
  readonly cooks: Map<string, Use[]>;
  readonly resources: Map<string, Use[]>;
  readonly ovens: Map<string, Baking[]>;
};

export const emptyTaken = (): Taken => ({ cooks: new Map(), resources: new Map(), ovens: new Map() });

/** Where a task is, and by whom. */
export type Stand = { readonly cook: string | null; readonly oven: string | null };

/** What is the same for every task of a prep. */
export type Rules = {
  readonly prep: Prep;
  readonly shifts: ReadonlyMap<string, readonly Use[]>;
  /** When somebody is in the kitchen. */
  readonly open: readonly Use[];
  readonly capacity: ReadonlyMap<string, number>;
  readonly shelves: ReadonlyMap<string, { readonly shelves: number; readonly cold: number }>;
};

const coldOven = 20;
/** Equipment that is never left on in an empty kitchen. */
const heat: ReadonlySet<string> = new Set(["burner", "oven", "grill", "fryer"]);

export const rulesOf = (prep: Prep): Rules => {
  const all = prep.crew
    .flatMap((cook) => cook.shifts.map(({ from, to }) => ({ from, to, amount: 1 })))
    .sort((a, b) => a.from - b.from);
  const open: { from: number; to: number; amount: number }[] = [];
  for (const shift of all) {
    const last = open.at(-1);
    if (last !== undefined && shift.from <= last.to) last.to = Math.max(last.to, shift.to);
    else open.push({ ...shift });
  }
  return {
    prep,
    shifts: new Map(
      prep.crew.map((cook) => [
        cook.name,
        cook.shifts.map(({ from, to }) => ({ from, to, amount: 1 })).sort((a, b) => a.from - b.from),
      ]),
    ),
    open,
    capacity: new Map(prep.resources.map((resource) => [resource.id, resource.capacity])),
    shelves: new Map(
      prep.ovens.map((oven) => [oven.id, { shelves: oven.shelves as number, cold: oven.cold ?? coldOven }]),
    ),
  };
};

/** A segment's length in a plan: whole minutes. */
export const lengthOf = (segment: Segment): number => Math.max(0, Math.ceil(segment.minutes.likely));
/** A task's length in a plan. */
export const wholeLength = (task: Task): number =>
  task.segments.reduce((sum, segment) => sum + lengthOf(segment), 0);

const unitsOf = ({ attention }: Rules["prep"], segment: Segment): number =>
  segment.attention === "none" ? 0 : segment.attention === "hands" ? attention.hands : attention.mind;

const changeOf = (prep: Prep, from: number, to: number): number => {
  const { ovenMinutesPer10C } = prep.kitchen;
  const { heat: up, cool } = prep.ramp ?? { heat: ovenMinutesPer10C, cool: ovenMinutesPer10C };
  return Math.ceil((Math.abs(to - from) * (to > from ? up : cool)) / 10 - 1e-6);
};

/**
 * The first start from `start` on at which nothing of what is looked at here stands in the way; the same when none does.
 * It may still not be free: it is to be asked again until the answer stays. Infinite when no later start helps.
 */
export const freeFrom = (
  rules: Rules,
  taken: Taken,
  task: Task,
  stand: Stand,
  start: number,
  minded = true,
): number => {
  const { prep } = rules;
  let at = start;
  for (const segment of task.segments) {
    const length = lengthOf(segment);
    const from = at;
    const to = at + length;
    at = to;
    const wait = (until: number): number => start + (until - from);
    if (length > 0 && segment.attention !== "none") {
      if (stand.cook === null) return Number.POSITIVE_INFINITY;
      if (minded) {
        const within = insideOf(rules.shifts.get(stand.cook) ?? [], from, to);
        if (within > from) return wait(within);
      }
      const own = overlapping(taken.cooks.get(stand.cook) ?? [], from, to);
      if (peak(own, from) + unitsOf(prep, segment) > prep.attention.capacity) return wait(soonestEnd(own));
    }
    for (const use of segment.uses) {
      if (use.resource === "oven" || rules.shelves.has(use.resource)) {
        const until = ovenFree(rules, taken, task.id, use, stand.oven, from, to);
        if (until > from) return wait(until);
        continue;
      }
      if (length === 0) continue;
      const there = rules.capacity.get(use.resource) ?? 0;
      if (use.amount > there + 1e-6) return Number.POSITIVE_INFINITY;
      const own = overlapping(taken.resources.get(use.resource) ?? [], from, to);
      if (peak(own, from) + use.amount > there + 1e-6) return wait(soonestEnd(own));
    }
    const manned =
      segment.manned ?? segment.uses.some((use) => heat.has(use.resource) || rules.shelves.has(use.resource));
    if (manned && minded && length > 0) {
      const within = insideOf(rules.open, from, to);
      if (within > from) return wait(within);
    }
  }
  return start;
};

const ovenFree = (
  { prep, shelves }: Rules,
  taken: Taken,
  task: string,
  use: Segment["uses"][number],
  oven: string | null,
  from: number,
  to: number,
): number => {
  const own = oven === null ? undefined : shelves.get(oven);
  if (oven === null || own === undefined || use.amount > own.shelves) return Number.POSITIVE_INFINITY;
  const celsius = use.celsius ?? coldOven;
  const warm = (prep.span?.from ?? Number.NEGATIVE_INFINITY) + changeOf(prep, own.cold, celsius);
  if (from < warm) return warm;
  const all = taken.ovens.get(oven) ?? [];
  let until = from;
  for (const other of all) {
    if (other.task === task || Math.abs(other.celsius - celsius) <= prep.kitchen.ovenTolerance) continue;
    if (other.to + changeOf(prep, other.celsius, celsius) <= from) continue;
    if (to + changeOf(prep, celsius, other.celsius) <= other.from) continue;
    until = Math.max(until, other.to + changeOf(prep, other.celsius, celsius));
  }
  if (until > from) return until;
  const there = overlapping(all, from, to);
  return peak(there, from) + use.amount > own.shelves ? soonestEnd(there) : from;
};

/** Notes what a task takes where it stands. */
export const take = (
  { prep, shelves }: Rules,
  taken: Taken,
  task: Task,
  stand: Stand,
  start: number,
): void => {
  let at = start;
  for (const segment of task.segments) {
    const from = at;
    const to = at + lengthOf(segment);
    at = to;
    if (stand.cook !== null && segment.attention !== "none" && to > from)
      listIn(taken.cooks, stand.cook).push({ from, to, amount: unitsOf(prep, segment) });
    for (const use of segment.uses) {
      if (use.resource !== "oven" && !shelves.has(use.resource)) {
        if (to > from) listIn(taken.resources, use.resource).push({ from, to, amount: use.amount });
      } else if (stand.oven !== null)
        listIn(taken.ovens, stand.oven).push({
          from,
          to,
          amount: use.amount,
          celsius: use.celsius ?? coldOven,
          task: task.id,
        });
    }
  }
};

const listIn = <V>(map: Map<string, V[]>, key: string): V[] => {
  const known = map.get(key);
  if (known !== undefined) return known;
  const fresh: V[] = [];
  map.set(key, fresh);
  return fresh;
};

const overlapping = <U extends Use>(uses: readonly U[], from: number, to: number): readonly U[] =>
  uses.filter((use) => use.from < to && from < use.to);

/** The most that is in use at once, of uses that all touch a stretch which begins at `from`. */
const peak = (uses: readonly Use[], from: number): number => {
  let most = 0;
  for (const { from: begins } of [...uses, { from }]) {
    const at = Math.max(begins, from);
    let sum = 0;
    for (const use of uses) if (use.from <= at && at < use.to) sum += use.amount;
    most = Math.max(most, sum);
  }
  return most;
};

const soonestEnd = (uses: readonly Use[]): number =>
  uses.reduce((least, use) => Math.min(least, use.to), Number.POSITIVE_INFINITY);

/** The first start from `from` on for a stretch to lie inside one of the shifts. */
const insideOf = (shifts: readonly Use[], from: number, to: number): number => {
  for (const shift of shifts)
    if (Math.max(shift.from, from) + (to - from) <= shift.to) return Math.max(shift.from, from);
  return Number.POSITIVE_INFINITY;
};
