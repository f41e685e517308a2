import type { Prep } from "../model/prep.ts";
import { chanceFrom } from "../search/chance.ts";
import { beginSooner, platesOf } from "./begin-sooner.ts";
import { latenessOf } from "./lateness.ts";
import { remember, restore } from "./memory.ts";
import { costOfStarts, emptyCost, placesOf } from "./objective.ts";
import { orderOf, spareNeeded } from "./order.ts";
import { nowhere, type Schedule } from "./schedule.ts";
import { makeSurer } from "./surer.ts";

/**
 * How many standard deviations of its chain a task is wanted sooner than it must; each is tried, and what makes courses
 * surest is kept. On a normal chain they are on time on 99, 95, 84 and 69 nights of a hundred.
 */
const depths = [2.33, 1.65, 1, 0.5] as const;
/** Minutes by which all work alike is tried sooner. */
const shifts = [15, 8] as const;
/** What a minute that hot food waits longer counts for against a minute of mean lateness. Common practice, no source. */
const ofWaiting = 0.02;
/** A task is not begun further before it must than this for it, minutes: another shift is no slack but another plan. */
const farthest = 90;
/** Of the orders that are tried at the end; the same work gives the same plan. */
const seed = 11;

/**
 * Places spare where it pays: each task is begun before it must by as much as the chain to its plates is spread, the
 * earliest first, so that there is room for what follows. No course is later for it, no guest's own version comes later,
 * no more work falls into the quiet hours and the service; hot food may be ready `prep.spareTime` minutes sooner at most.
 * What came of it is run for some nights, and kept only if courses are surer by it; then other orders of the work before
 * the courses are tried likewise.
 */
export const placeSpare = (prep: Prep, schedule: Schedule): void => {
  const { model } = schedule;
  const allowed = prep.spareTime;
  if (allowed === undefined || !schedule.start.every((at) => at !== nowhere)) return;
  const plates = platesOf(model);
  const before = remember(schedule);
  const { latest, deviation } = spareNeeded(orderOf(prep, schedule), schedule, plates);
  const gate = gateOf(schedule, allowed);
  let best = before;
  let least = latenessOf(prep, schedule);
  const ways = [
    ...depths.map((depth) => (n: number) => (latest[n] as number) - depth * (deviation[n] as number)),
    // And all of it alike, for the order of the hands.
    ...shifts.map((by) => (n: number) => (before.start[n] as number) - by),
  ];
  for (const wanted of ways) {
    restore(schedule, before);
    beginSooner(schedule, plates, farthest, wanted, (start) => gate(start) !== null);
    const score = latenessOf(prep, schedule) + ofWaiting * (gate(schedule.start) ?? 0);
    if (score >= least) continue;
    least = score;
    best = remember(schedule);
  }
  restore(schedule, best);
  makeSurer(prep, schedule, plates, chanceFrom(seed), (start) => {
    const waits = gate(start);
    return waits === null ? null : ofWaiting * waits;
  });
};

/** Minutes that hot food waits longer than in the schedule; null when something got worse that may not. */
const gateOf = (schedule: Schedule, allowed: number): ((start: Int32Array) => number | null) => {
  const { model, slip } = schedule;
  const place = placesOf(model);
  const before = costOfStarts(model, schedule.start, slip);
  const now = emptyCost(model);
  const sum = (cost: Float64Array): number =>
    (cost[place("calm")] as number) + (cost[place("service")] as number);
  const waitOf = (start: Int32Array, task: number, plate: number): number =>
    Math.max(0, (start[plate] as number) - (start[task] as number) - (model.nodes[task]?.length ?? 0));
  const waits = model.holds.map((hold) => waitOf(schedule.start, hold.task, hold.plate));
  const worse = (level: "free-from" | "freshness"): boolean =>
    (now[place(level)] as number) > (before[place(level)] as number);
  return (start) => {
    costOfStarts(model, start, slip, now);
    if (worse("free-from") || worse("freshness") || sum(now) > sum(before)) return null;
    let more = 0;
    for (let h = 0; h < model.holds.length; h += 1) {
      const hold = model.holds[h];
      if (hold === undefined || !hold.hot) continue;
      const longer = waitOf(start, hold.task, hold.plate) - (waits[h] as number);
      if (longer > allowed) return null;
      more += Math.max(0, longer);
    }
    return more;
  };
};
