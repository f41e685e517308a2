import type { Chance } from "../search/chance.ts";
import { tasksOf } from "./build.ts";
import { calmEnd } from "./place.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/** Chooses some tasks to take out together. */
export type Neighbourhood = (schedule: Schedule, chance: Chance) => readonly number[];

const lengthOf = (schedule: Schedule, node: number): number => schedule.model.nodes[node]?.length ?? 0;

/** Tasks that stand in a stretch of time, wholly or in part, and pass a test. */
export const between = (
  schedule: Schedule,
  from: number,
  to: number,
  wanted: (node: number) => boolean = () => true,
): number[] => {
  const found: number[] = [];
  for (let n = 0; n < schedule.model.taskCount; n++) {
    const at = schedule.start[n] as number;
    if (at !== nowhere && at < to && at + lengthOf(schedule, n) > from && wanted(n)) found.push(n);
  }
  return found;
};

/** A term of waiting, drawn in proportion to what it costs. */
const waiting = (
  schedule: Schedule,
  chance: Chance,
  hot: boolean | null,
): { readonly task: number; readonly plate: number } | null => {
  const { holds } = schedule.model;
  const costs = holds.map((h) =>
    hot !== null && h.hot !== hot
      ? 0
      : h.weight *
        Math.max(
          0,
          (schedule.start[h.plate] as number) -
            (schedule.start[h.task] as number) -
            lengthOf(schedule, h.task),
        ),
  );
  let left = chance.share() * costs.reduce((sum, c) => sum + c, 0);
  for (let i = 0; i < holds.length; i++) {
    left -= costs[i] as number;
    if (left < 0) return holds[i] ?? null;
  }
  return null;
};

/** The whole of a course, and of the next one now and then. */
export const course: Neighbourhood = (schedule, chance) => {
  const goal = chance.below(schedule.model.goals.length);
  const own = tasksOf(schedule, goal);
  return chance.below(3) === 0 ? [...own, ...tasksOf(schedule, goal + 1)] : own;
};

/** The finishing of a course, with all that stands in its way. */
export const finish: Neighbourhood = (schedule, chance) => {
  const goal = chance.below(schedule.model.goals.length);
  const to = schedule.start[schedule.model.landing[goal] ?? 0] as number;
  const from = to - 15 - chance.below(60);
  return between(schedule, from, to);
};

/** Everything in a stretch of one to two hours before a due time, or before the work of a random task. */
export const hours: Neighbourhood = (schedule, chance) => {
  const at = schedule.start[chance.below(schedule.model.nodes.length)] as number;
  const length = 30 + chance.below(120);
  return between(schedule, at - chance.below(length), at - chance.below(length) + length);
};

/** One cook's work over a few hours. */
export const oneCook: Neighbourhood = (schedule, chance) => {
  const node = chance.below(schedule.model.taskCount);
  const cook = schedule.cook[node] as number;
  const at = schedule.start[node] as number;
  const length = 60 + chance.below(240);
  return between(schedule, at - length / 2, at + length / 2, (n) => schedule.cook[n] === cook);
};

/** A hot thing that waits, with what stands between its start and its plate. */
export const hotWait: Neighbourhood = (schedule, chance) => around(schedule, chance, true);
/** The same of a cold one. */
export const coldWait: Neighbourhood = (schedule, chance) => around(schedule, chance, false);

const around = (schedule: Schedule, chance: Chance, hot: boolean): readonly number[] => {
  const term = waiting(schedule, chance, hot);
  if (!term) return some(schedule, chance);
  const from = schedule.start[term.task] as number;
  const plate = schedule.start[term.plate] as number;
  const chain = chance.below(2) === 0 ? before(schedule, term.task) : [];
  // Of a long wait a part is looked at: before the plate, or after the task.
  const most = 30 + chance.below(90);
  const to = plate + chance.below(20);
  const late = between(schedule, Math.max(from, plate - most), to);
  const early =
    plate - from > most ? between(schedule, from - chance.below(20), from + chance.below(most)) : [];
  const pick = chance.below(3);
  const both = pick === 0 ? late : pick === 1 ? early : [...late, ...early];
  return [...new Set([term.task, ...chain, ...both])];
};

/** What must come before a task, by lags, in its own dish. */
const before = (schedule: Schedule, node: number): number[] => {
  const { kin, model } = schedule;
  const found = new Set<number>();
  const walk = (n: number): void => {
    for (let k = kin.into.first[n] as number; k < (kin.into.first[n + 1] as number); k++) {
      const from = kin.into.other[k] as number;
      if ((kin.into.weight[k] as number) <= 0 || from >= model.taskCount || found.has(from)) continue;
      found.add(from);
      walk(from);
    }
  };
  walk(node);
  return [...found];
};

/** What stands in the quiet hours and need not, with what comes before it and some of what it might change places with. */
export const unquiet: Neighbourhood = (schedule, chance) => {
  const found = unquietTasks(schedule);
  const node = found[chance.below(found.length)];
  if (node === undefined) return some(schedule, chance);
  const chain = before(schedule, node);
  const at = (schedule.start[node] as number) - chance.below(240);
  const cook = schedule.cook[node] as number;
  const more = between(schedule, at, at + 30 + chance.below(60), (n) =>
    chance.below(2) === 0 ? true : schedule.cook[n] === cook,
  );
  return [...new Set([node, ...chain, ...more])];
};

export const unquietTasks = (schedule: Schedule): readonly number[] => {
  const { model, start } = schedule;
  const found: number[] = [];
  for (let node = 0; node < model.taskCount; node++) {
    const task = model.nodes[node];
    const at = start[node] as number;
    if (task && at !== nowhere && calmEnd(model, { ...task, weight: 0 }, at) < at) found.push(node);
  }
  return found;
};

/** Tasks in one oven over some hours. */
export const ovenRuns: Neighbourhood = (schedule, chance) => {
  const bakers: number[] = [];
  for (let n = 0; n < schedule.model.taskCount; n++) {
    if ((schedule.oven[n] as number) >= 0) bakers.push(n);
  }
  const node = bakers[chance.below(bakers.length)];
  if (node === undefined) return some(schedule, chance);
  const at = schedule.start[node] as number;
  const length = 60 + chance.below(180);
  const there = between(schedule, at - length, at + length, (n) => (schedule.oven[n] as number) >= 0);
  return [...new Set(there.flatMap((n) => (chance.below(3) === 0 ? [n, ...before(schedule, n)] : [n])))];
};

/** Tasks from anywhere. */
export const some: Neighbourhood = (schedule, chance) => {
  const count = 3 + chance.below(12);
  const found = new Set<number>();
  for (let i = 0; i < count; i++) found.add(chance.below(schedule.model.taskCount));
  return [...found];
};
