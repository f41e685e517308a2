import { exactly } from "../measure/estimate.ts";
import { type Moment, minutes } from "../measure/units.ts";
import type { Placed } from "../model/plan.ts";
import type { Prep, Segment, Task, TaskId } from "../model/prep.ts";
import type { Progress } from "../model/rest.ts";
import { handsApart } from "./hands-apart.ts";
import { emptyTaken, freeFrom, lengthOf, rulesOf, take } from "./taken.ts";

/** A task that has begun, where it was put, and when it is now thought to end. */
export type Begun = {
  readonly task: Task;
  readonly place: Placed;
  readonly start: Moment;
  readonly ends: Moment;
};

/** What is left of running tasks, and where each goes on; null for one that cannot, since what it needs is taken or gone. */
export type GoingOn = ReadonlyMap<TaskId, { readonly task: Task; readonly place: Placed | null }>;

/**
 * Running tasks from now on. Each keeps its cook and its oven; where the cook has left, another who is free takes over.
 * What asks for more than there is, in the order in which it was begun, has to wait.
 */
export const runningNow = (
  prep: Prep,
  begun: readonly Begun[],
  now: Moment,
  away: NonNullable<Progress["away"]>,
  done: ReadonlySet<TaskId>,
): GoingOn => {
  const rules = rulesOf(prep);
  const there = new Set(
    prep.crew.filter((cook) => cook.shifts.some((shift) => shift.to > now)).map((cook) => cook.name),
  );
  const rests = begun
    .map((entry) => ({ ...entry, rest: remainder(entry, now) }))
    .sort((a, b) => a.start - b.start);
  const apart = new Map<TaskId, Task>();
  for (const cook of new Set(rests.map(({ place }) => place.cook))) {
    const own = rests.flatMap(({ place, rest }) => (place.cook === cook ? [rest] : []));
    for (const task of cook === null ? own : handsApart(own)) apart.set(task.id, task);
  }
  const taken = emptyTaken();
  const vessels = vesselsInUse(prep, done);
  const found = new Map<TaskId, { readonly task: Task; readonly place: Placed | null }>();
  for (const { place, rest } of rests) {
    const task = apart.get(rest.id) ?? rest;
    const attended = task.segments.some((s) => s.attention !== "none" && lengthOf(s) > 0);
    const others = [...there].filter((cook) => cook !== place.cook && (task.cooks?.includes(cook) ?? true));
    // One whose shift ends meanwhile stays with it; one who leaves cannot.
    const ends = now + handsUntil(task);
    const leaves = away.some((entry) => entry.cook === place.cook && entry.from < ends);
    const cooks: readonly (string | null)[] = attended ? (leaves ? others : [place.cook]) : [null];
    const cook = vessels.takes(task.id)
      ? cooks.find(
          (name) => freeFrom(rules, taken, task, { cook: name, oven: place.oven }, now, false) === now,
        )
      : undefined;
    if (cook === undefined) {
      found.set(task.id, { task, place: null });
      continue;
    }
    take(rules, taken, task, { cook, oven: place.oven }, now);
    found.set(task.id, { task, place: { ...place, cook } });
  }
  return found;
};

/** Counts the vessels that are in use: first those filled by what is done, then by running tasks one after the other. */
const vesselsInUse = (
  prep: Prep,
  done: ReadonlySet<TaskId>,
): { readonly takes: (task: TaskId) => boolean } => {
  const used = new Map<string, number>();
  const stays = (prep.stays ?? []).filter((stay) => stay.to === null || !done.has(stay.to));
  for (const { from, resource, amount } of stays)
    if (from === null || done.has(from)) used.set(resource, (used.get(resource) ?? 0) + amount);
  const there = new Map(prep.resources.map((resource) => [resource.id, resource.capacity]));
  return {
    takes: (task) => {
      const own = stays.filter((stay) => stay.from === task);
      const fits = own.every(
        ({ resource, amount }) => (used.get(resource) ?? 0) + amount <= (there.get(resource) ?? 0) + 1e-6,
      );
      if (fits)
        for (const { resource, amount } of own) used.set(resource, (used.get(resource) ?? 0) + amount);
      return fits;
    },
  };
};

/** Minutes from its beginning after which a task needs nobody any more. */
export const handsUntil = (task: Task): number => {
  let at = 0;
  let until = 0;
  for (const segment of task.segments) {
    at += lengthOf(segment);
    if (segment.attention !== "none") until = at;
  }
  return until;
};

/**
 * What is left of a running task: the segment that is under way, and those after. When it ends later than planned, the
 * longest of them does: a roast that is late stands longer in the oven, and nobody puts it in for longer.
 */
const remainder = ({ task, place, start, ends }: Begun, now: Moment): Task => {
  // It may have begun at another hour than planned.
  const shift = start - place.start;
  const current = Math.max(
    0,
    place.segments.findLastIndex((at) => at + shift <= now),
  );
  const lengths = task.segments.slice(current).map(lengthOf);
  const whole = Math.max(1, Math.ceil(ends) - now);
  const before = Math.ceil((place.segments[current] ?? now) + shift + (lengths[0] ?? 0)) - now;
  if (lengths.length > 0) lengths[0] = Math.max(1, before);
  const over = whole - lengths.reduce((sum, n) => sum + n, 0);
  const stretched = over > 0 ? lengths.indexOf(Math.max(...lengths)) : 0;
  if (lengths.length > 0) lengths[stretched] = Math.max(1, (lengths[stretched] ?? 0) + over);
  return {
    ...task,
    segments: task.segments
      .slice(current)
      .map(
        (segment, s): Segment =>
          s === 0 || s === stretched ? { ...segment, minutes: exactly(minutes(lengths[s] ?? 1)) } : segment,
      ),
  };
};
