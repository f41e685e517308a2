import type { Chance } from "../search/chance.ts";
import { insertAll, openAround, takeOut } from "./insert.ts";
import { freshInsertion } from "./insertion.ts";
import { remember, restore } from "./memory.ts";
import { compareCosts, costOf, emptyCost } from "./objective.ts";
import { latestSpot, putAt } from "./place.ts";
import { nowhere, put, type Schedule, type Spot, setSlip, spotOf } from "./schedule.ts";

/** A course is never planned later than this after its due time, minutes. */
export const mostSlip = 6 * 60;
/** Throws allowed for each task of a course while it is put in. */
const throwsEach = 6;
/** Other orders of insertion that are tried before a course is let slip. */
const shufflesOnTime = 5;

/**
 * With vessels that are scarce each try takes long, and much of the slip goes when the schedule is made better: it is
 * found to within this part of itself.
 */
const roughly = 0.25;

/** Puts in one course after the other, earliest due first; a course that finds no place slips by the least that gives it one. */
export const build = (schedule: Schedule, chance: Chance, keepGoing: () => boolean): void => {
  clear(schedule);
  for (let goal = 0; goal < Math.max(1, schedule.model.goals.length); goal++)
    insertCourse(schedule, goal, chance, keepGoing);
};

const clear = (schedule: Schedule): void => {
  const { model, start } = schedule;
  const nodes = Array.from({ length: model.taskCount }, (_, n) => n).filter((n) => start[n] !== nowhere);
  for (let goal = 0; goal < model.goals.length; goal++) setSlip(schedule, goal, 0);
  takeOut(schedule, nodes);
  schedule.gone.fill(0);
};

/**
 * Puts in what finds a place of each course when it is due, and leaves the rest out. It takes a part of what it takes to
 * build, and what is left out often finds a place when little else is moved.
 */
export const sketch = (schedule: Schedule): void => {
  for (let goal = 0; goal < Math.max(1, schedule.model.goals.length); goal++)
    insertPart(schedule, tasksOf(schedule, goal));
};

const insertPart = (schedule: Schedule, nodes: readonly number[]): void => {
  takeOut(schedule, nodes);
  insertAll(schedule, nodes, freshInsertion(schedule, throwsEach * nodes.length, null, null, false));
};

/** Tasks of a course, shared work included with the first course that needs it. */
export const tasksOf = (schedule: Schedule, goal: number): readonly number[] => {
  const found: number[] = [];
  for (let node = 0; node < schedule.model.taskCount; node++) {
    const task = schedule.model.nodes[node];
    if (task?.course === goal && task.anyStarts.length > 0) found.push(node);
  }
  return found;
};

const insertCourse = (schedule: Schedule, goal: number, chance: Chance, keepGoing: () => boolean): void => {
  const nodes = tasksOf(schedule, goal);
  const before = remember(schedule);
  const noise = new Int32Array(schedule.model.nodes.length);
  const tried = (slip: number, shuffles: number): boolean => {
    for (let i = 0; i <= shuffles; i++) {
      restore(schedule, before);
      if (i === 0) {
        if (tryAt(schedule, goal, nodes, slip, null, null)) return true;
        continue;
      }
      for (let n = 0; n < noise.length; n++) noise[n] = chance.below(8 * i);
      if (!keepGoing() || tryAt(schedule, goal, nodes, slip, chance, noise)) return keepGoing();
    }
    return false;
  };
  if (tried(0, shufflesOnTime)) return;
  let fails = 0;
  let works: number | null = null;
  for (let slip = 1; slip <= mostSlip && keepGoing(); slip = Math.ceil(slip * 1.7)) {
    if (tried(slip, 0)) {
      works = slip;
      break;
    }
    fails = slip;
  }
  if (works === null) {
    // It has no place at any hour: as much of it as fits stands at its due time, and the rest is named.
    restore(schedule, before);
    insertPart(schedule, nodes);
    return;
  }
  const apart = schedule.model.stays.length > 0 ? works * roughly : 0;
  while (works - fails > Math.max(1, apart) && keepGoing()) {
    const mid = Math.floor((works + fails) / 2);
    if (tried(mid, 1)) works = mid;
    else fails = mid;
  }
  if (!tried(works, 1)) tried(works, shufflesOnTime);
};

/** True when the course stands whole at this slip and nothing that stood before was lost. */
export const tryAt = (
  schedule: Schedule,
  goal: number,
  nodes: readonly number[],
  slip: number,
  chance: Chance | null,
  noise: Int32Array | null,
): boolean => {
  takeOut(schedule, nodes);
  setSlip(schedule, goal, slip);
  const landing = schedule.model.landing[goal];
  if (!openAround(schedule, landing === undefined ? nodes : [landing, ...nodes])) return false;
  const state = freshInsertion(schedule, throwsEach * nodes.length, chance, noise, true);
  return insertAll(schedule, nodes, state).length === 0;
};

/** Moves every task as late as everything else lets it without a loss, the last first, until nothing moves. */
export const settle = (schedule: Schedule): void => {
  const { model, start } = schedule;
  const endOf = (n: number): number => (start[n] as number) + (model.nodes[n]?.length ?? 0);
  const cost = costOf(schedule);
  const moving = emptyCost(model);
  for (let round = 0; round < 4; round++) {
    let moved = false;
    const order = Array.from({ length: model.taskCount }, (_, n) => n)
      .filter((n) => start[n] !== nowhere)
      .sort((a, b) => endOf(b) - endOf(a) || a - b);
    for (const node of order) {
      const spot = spotOf(schedule, node) as Spot;
      takeOut(schedule, [node]);
      const later = latestSpot(schedule, node);
      if (later && later.start > spot.start && putAt(schedule, node, later)) {
        if (compareCosts(costOf(schedule, moving), cost) <= 0) {
          cost.set(moving);
          moved = true;
          continue;
        }
        takeOut(schedule, [node]);
      }
      put(schedule, node, spot.start, spot.cook, spot.oven);
    }
    if (!moved) return;
  }
};
