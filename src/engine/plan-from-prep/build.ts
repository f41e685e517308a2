import type { Chance } from "./chance.ts";
import { byLatest, insertAll } from "./insert.ts";
import type { Insertion } from "./insertion.ts";
import { remember, restore } from "./memory.ts";
import { latestSpot } from "./place.ts";
import { put, type Schedule, setSlip, take } from "./schedule.ts";

/** A course is never planned later than this after its due time, minutes. */
export const mostSlip = 6 * 60;
/** Throws allowed for each task of a course while it is put in. */
const throwsEach = 6;
/** Spots looked at for each throw, so that the work of one insertion is bounded. */
const looksEach = 8;

/** Puts in one course after the other, earliest due first; a course that finds no place slips by the least that gives it one. */
export const build = (schedule: Schedule, chance: Chance | null): void => {
  for (let goal = 0; goal < Math.max(1, schedule.model.goals.length); goal++)
    insertCourse(schedule, goal, chance);
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

const insertCourse = (schedule: Schedule, goal: number, chance: Chance | null): void => {
  const nodes = tasksOf(schedule, goal);
  const before = remember(schedule);
  const tried = (slip: number): boolean => {
    restore(schedule, before);
    return tryAt(schedule, goal, nodes, slip, chance);
  };
  if (tried(0)) return;
  let fails = 0;
  let works: number | null = null;
  for (let slip = 1; slip <= mostSlip; slip = Math.ceil(slip * 1.7)) {
    if (tried(slip)) {
      works = slip;
      break;
    }
    fails = slip;
  }
  if (works === null) {
    // It has no place at any hour: as much of it as fits stands at its due time, and the rest is named.
    restore(schedule, before);
    insertAll(
      schedule,
      nodes,
      byLatest(schedule, () => 0),
      freshState(schedule, 0, chance),
    );
    return;
  }
  while (works - fails > 1) {
    const mid = Math.floor((works + fails) / 2);
    if (tried(mid)) works = mid;
    else fails = mid;
  }
  tried(works);
};

/** True when the course stands whole at this slip and nothing that stood before was lost. */
export const tryAt = (
  schedule: Schedule,
  goal: number,
  nodes: readonly number[],
  slip: number,
  chance: Chance | null,
  noise: (node: number) => number = () => 0,
): boolean => {
  for (const node of nodes) take(schedule, node);
  setSlip(schedule, goal, slip);
  const state = {
    ...freshState(schedule, throwsEach * nodes.length, chance),
    restless: chance ? noise : null,
  };
  return insertAll(schedule, nodes, byLatest(schedule, noise), state).length === 0;
};

export const freshState = (schedule: Schedule, throws: number, chance: Chance | null): Insertion => ({
  penalty: schedule.model.nodes.map(() => 0),
  throws,
  looks: throws * looksEach,
  chance,
  restless: null,
});

/** Moves every task as late as everything else lets it, the last first, until nothing moves. */
export const settle = (schedule: Schedule): void => {
  const { model, spots } = schedule;
  for (let round = 0; round < 4; round++) {
    let moved = false;
    const order = Array.from({ length: model.taskCount }, (_, n) => n)
      .filter((n) => spots[n])
      .sort((a, b) => endOf(schedule, b) - endOf(schedule, a) || a - b);
    for (const node of order) {
      const spot = spots[node];
      if (!spot) continue;
      take(schedule, node);
      const later = latestSpot(schedule, node);
      if (later && later.start > spot.start) {
        put(schedule, node, later);
        moved = true;
      } else {
        put(schedule, node, spot);
      }
    }
    if (!moved) return;
  }
};

const endOf = (schedule: Schedule, node: number): number =>
  (schedule.spots[node]?.start ?? 0) + (schedule.model.nodes[node]?.length ?? 0);
