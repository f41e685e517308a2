import type { Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { beginSooner, platesOf } from "./begin-sooner.ts";
import { compile } from "./compile.ts";
import { follow } from "./follow.ts";
import { latenessOf } from "./lateness.ts";
import { longestPaths } from "./longest-paths.ts";
import { remember, restore } from "./memory.ts";
import { orderOf, spareNeeded, standing } from "./order.ts";
import { emptySchedule } from "./schedule.ts";

/**
 * The same plan with work begun up to so many minutes sooner, the plates where they are, as far as limits, hands and places
 * let it: all of it, or only what has less than that to spare, whichever makes courses surer; as it was when neither
 * does. Why a task stands where it stands is not told.
 */
export const planWithSpare = (prep: Prep, plan: Plan, minutes: number): Plan => {
  const model = compile(prep);
  const schedule = emptySchedule(model, longestPaths(model.nodes.length, model.arcs));
  follow(schedule, plan.placed);
  const before = remember(schedule);
  const plates = platesOf(model);
  const { latest } = spareNeeded(orderOf(prep, schedule), schedule, plates);
  let best = before;
  let least = latenessOf(prep, schedule);
  for (const wanted of [
    (node: number) => (before.start[node] as number) - minutes,
    (node: number) => (latest[node] as number) - minutes,
  ]) {
    restore(schedule, before);
    beginSooner(schedule, plates, minutes, wanted, () => true);
    const late = latenessOf(prep, schedule);
    if (late >= least) continue;
    least = late;
    best = remember(schedule);
  }
  restore(schedule, best);
  return { ...plan, placed: standing(prep, schedule) };
};
