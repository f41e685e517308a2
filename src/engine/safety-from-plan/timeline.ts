import { type Minutes, minutes } from "../measure/units.ts";
import { hotStations, type Station } from "../model/food.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { LagReason, Prep, Task, TaskId } from "../model/prep.ts";

/** A stretch of a task with its place in time, moments in minutes. */
export type Stretch = { readonly station: Station; readonly start: number; readonly end: number };

/** A task with its place in time and the tasks whose product or turn it waits for. */
export type Timed = {
  readonly task: Task;
  readonly start: number;
  readonly end: number;
  readonly stretches: readonly Stretch[];
  readonly before: readonly TaskId[];
  readonly after: readonly TaskId[];
};

/** The placed tasks of a plan, by id. Tasks that found no place are not in it. */
export type Timeline = ReadonlyMap<TaskId, Timed>;

// Lags that food flows along; the others tie plates, ovens and pans.
const flows: readonly LagReason[] = [
  "uses-product",
  "method-order",
  "stated-wait",
  "hold-limit",
  "fridge-limit",
  "serve-soon",
];

/** The placed tasks with their stretches, and which food flows from which into which. */
export const timelineOf = (prep: Prep, plan: Plan): Timeline => {
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const before = new Map<TaskId, TaskId[]>();
  const after = new Map<TaskId, TaskId[]>();
  for (const lag of prep.lags) {
    if (!flows.includes(lag.reason)) continue;
    before.set(lag.after, [...(before.get(lag.after) ?? []), lag.before]);
    after.set(lag.before, [...(after.get(lag.before) ?? []), lag.after]);
  }
  return new Map(
    prep.tasks.flatMap((task): [TaskId, Timed][] => {
      const place = placed.get(task.id);
      if (place === undefined) return [];
      return [
        [
          task.id,
          {
            task,
            start: place.start,
            end: place.end,
            stretches: stretchesOf(task, place),
            before: before.get(task.id) ?? [],
            after: after.get(task.id) ?? [],
          },
        ],
      ];
    }),
  );
};

const stretchesOf = (task: Task, place: Placed): readonly Stretch[] =>
  task.segments.map((segment, i) => ({
    station: segment.station,
    start: place.segments[i] ?? place.start,
    end: place.segments[i + 1] ?? place.end,
  }));

const colds: readonly Station[] = ["fridge", "freezer"];

const isHot = (stretch: Stretch): boolean => hotStations.has(stretch.station);
/** True for a stretch in the fridge or the freezer. */
export const isCold = (stretch: Stretch): boolean => colds.includes(stretch.station);

/** When heat that a task carries on ends, looking back along the flow of food as far as the last cold; null when there is none. */
export const heatBefore = (timeline: Timeline, from: Timed, until: number): number | null => {
  const seen = new Set<TaskId>([from.task.id]);
  const queue: readonly TaskId[] = from.before;
  const ends = from.stretches.filter((s) => isHot(s) && s.end <= until).map((s) => s.end);
  const walk = [...queue];
  for (let id = walk.pop(); id !== undefined; id = walk.pop()) {
    const timed = timeline.get(id);
    if (timed === undefined || seen.has(id)) continue;
    seen.add(id);
    const hot = timed.stretches.filter(isHot).map((s) => s.end);
    if (hot.length > 0) ends.push(Math.max(...hot));
    else if (!timed.stretches.some(isCold)) walk.push(...timed.before);
  }
  return ends.length === 0 ? null : Math.max(...ends);
};

/** When what is put into the cold next meets heat or a plate, along the flow of food; null when it never does. */
export const nextUse = (timeline: Timeline, from: Timed): number | null => {
  const seen = new Set<TaskId>([from.task.id]);
  const walk = [...from.after];
  const starts: number[] = [];
  for (let id = walk.pop(); id !== undefined; id = walk.pop()) {
    const timed = timeline.get(id);
    if (timed === undefined || seen.has(id)) continue;
    seen.add(id);
    const hot = timed.stretches.find(isHot);
    if (hot !== undefined) starts.push(hot.start);
    else if (timed.task.kind === "plate") starts.push(timed.start);
    else walk.push(...timed.after);
  }
  return starts.length === 0 ? null : Math.max(...starts);
};

/** Minutes between two moments, never less than none. */
export const between = (start: number, end: number): Minutes => minutes(Math.max(0, end - start));
