import type { GoalLevel } from "../model/prep.ts";
import type { Model } from "./model.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/** What a schedule costs, in the order it is compared: tasks without a place, then the levels of the model. */
export type Cost = Float64Array;

export const costOf = (schedule: Schedule, into: Cost = emptyCost(schedule.model)): Cost =>
  costOfStarts(schedule.model, schedule.start, schedule.slip, into);

/** The cost of starts and slips by themselves. */
export const costOfStarts = (
  model: Model,
  start: Int32Array,
  slip: Int32Array,
  into: Cost = emptyCost(model),
): Cost => {
  const at = placesOf(model);
  into.fill(0);
  const hold = at("hold");
  const fresh = at("freshness");
  for (let node = 0; node < model.taskCount; node++) {
    if (start[node] === nowhere) into[0] = (into[0] as number) + 1;
  }
  const late = at("late");
  for (const s of slip) into[late] = (into[late] as number) + s;
  for (const h of model.holds) {
    const task = start[h.task] as number;
    const plate = start[h.plate] as number;
    if (task === nowhere || plate === nowhere) continue;
    const level = h.hot ? hold : fresh;
    into[level] = (into[level] as number) + h.weight * Math.max(0, plate - task - lengthOf(model, h.task));
  }
  for (const pair of model.freeFrom) {
    const before = start[pair.before] as number;
    const after = start[pair.after] as number;
    if (before === nowhere || after === nowhere) continue;
    if (before + lengthOf(model, pair.before) > after) {
      into[at("free-from")] = (into[at("free-from")] as number) + 1;
    }
  }
  const calm = at("calm");
  const service = at("service");
  for (let node = 0; node < model.taskCount; node++) {
    const task = model.nodes[node];
    const from = start[node] as number;
    if (!task || from === nowhere || task.finishing || task.handsFrom < 0) continue;
    for (const hour of model.calm) {
      if (from + task.handsFrom >= hour.to || from + task.handsTo <= hour.from) continue;
      for (const a of task.attended) {
        if (!a.hands) continue;
        const begin = from + a.offset;
        into[calm] = (into[calm] as number) + overlap(begin, begin + a.length, hour.from, hour.due);
        into[service] = (into[service] as number) + overlap(begin, begin + a.length, hour.due, hour.to);
      }
    }
  }
  // What the problem does not ask for is kept behind the levels, where nothing looks at it.
  into[into.length - 1] = 0;
  return into;
};

/** Room for the unplaced, each level, and one that takes what is not compared. */
export const emptyCost = (model: Model): Cost => new Float64Array(model.levels.length + 2);

const tables = new WeakMap<Model, (level: GoalLevel) => number>();

/** The place of each level in a cost; of one that the model does not compare by, the last place. */
export const placesOf = (model: Model): ((level: GoalLevel) => number) => {
  const known = tables.get(model);
  if (known) return known;
  const places = new Map(model.levels.map((level, l) => [level, l + 1]));
  const at = (level: GoalLevel): number => places.get(level) ?? model.levels.length + 1;
  tables.set(model, at);
  return at;
};

const lengthOf = (model: Model, node: number): number => model.nodes[node]?.length ?? 0;

/** Negative when a is better. */
export const compareCosts = (a: Cost, b: Cost): number => {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] as number) - (b[i] as number);
    if (difference !== 0) return difference;
  }
  return 0;
};

const overlap = (aFrom: number, aTo: number, bFrom: number, bTo: number): number =>
  Math.max(0, Math.min(aTo, bTo) - Math.max(aFrom, bFrom));
