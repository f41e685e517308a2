import { compareRanks } from "./place.ts";
import type { Schedule } from "./schedule.ts";

/** What a schedule costs, in the order it is compared: unplaced, late, hold, calm, service. */
export type Cost = readonly [
  unplaced: number,
  lateMinutes: number,
  holdMinutes: number,
  calmMinutes: number,
  serviceMinutes: number,
];

export const costOf = (schedule: Schedule): Cost => {
  const { model, spots, slip } = schedule;
  let unplaced = 0;
  let calm = 0;
  let service = 0;
  for (let node = 0; node < model.taskCount; node++) {
    const spot = spots[node];
    const task = model.nodes[node];
    if (!spot || !task) {
      unplaced += 1;
      continue;
    }
    if (task.finishing) continue;
    for (const a of task.attended) {
      if (!a.hands) continue;
      const from = spot.start + a.offset;
      for (const hour of model.calm) {
        calm += overlap(from, from + a.length, hour.from, hour.due);
        service += overlap(from, from + a.length, hour.due, hour.to);
      }
    }
  }
  let hold = 0;
  for (const h of model.holds) {
    const task = spots[h.task];
    const plate = spots[h.plate];
    if (!task || !plate) continue;
    hold += h.weight * Math.max(0, plate.start - task.start - (model.nodes[h.task]?.length ?? 0));
  }
  return [unplaced, slip.reduce((sum, s) => sum + s, 0), hold, calm, service];
};

/** Negative when a is better. */
export const compareCosts = (a: Cost, b: Cost): number => compareRanks(a, b);

const overlap = (aFrom: number, aTo: number, bFrom: number, bTo: number): number =>
  Math.max(0, Math.min(aTo, bTo) - Math.max(aFrom, bFrom));
