import type { Prep } from "../model/prep.ts";
import type { Chance } from "../search/chance.ts";
import { insertAll, takeOut } from "./insert.ts";
import { freshInsertion } from "./insertion.ts";
import { latenessOf } from "./lateness.ts";
import { remember, rememberIn, restore } from "./memory.ts";
import { between } from "./neighbourhoods.ts";
import { compareCosts, costOf, emptyCost } from "./objective.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/** Repairs for each pair that stands in the wrong order, and in all. */
const triesEach = 12;
const mostTries = 120;
/** Minutes of mean lateness, all courses together, that it may cost. Common practice, no source. */
const unsure = 0.25;
/** Tasks taken out at once. */
const mostOut = 40;
/** Minutes by which the version that holds what a guest may not have is put down later than it would be. */
const holdBack = 90;

/**
 * Takes out the work on both versions of a dish whose order is wrong, with some of what stands around it, and puts it in
 * again, the other version the latest; keeps what is better, and never what is worse in a weightier level or makes
 * courses less sure.
 */
export const guestsBefore = (
  prep: Prep,
  schedule: Schedule,
  chance: Chance,
  keepGoing: () => boolean,
): void => {
  const { model, start } = schedule;
  const endOf = (n: number): number => (start[n] as number) + (model.nodes[n]?.length ?? 0);
  const wrong = () =>
    model.freeFrom.filter(
      ({ before, after }) =>
        start[before] !== nowhere && start[after] !== nowhere && endOf(before) > (start[after] as number),
    );
  const best = remember(schedule);
  const bestCost = costOf(schedule);
  const cost = emptyCost(model);
  const bearable = latenessOf(prep, schedule) + unsure;
  const noise = new Int32Array(model.nodes.length);
  const tries = Math.min(mostTries, triesEach * wrong().length);
  for (let i = 0; i < tries && keepGoing(); i += 1) {
    const pairs = wrong();
    const pair = pairs[chance.below(pairs.length)];
    if (pair === undefined) return;
    const out = new Set([pair.before, pair.after]);
    const dish = model.nodes[pair.before]?.dish;
    for (const n of schedule.kin.sets[schedule.kin.setOf[pair.before] as number] ?? [])
      if (n < model.taskCount && model.nodes[n]?.dish === dish && start[n] !== nowhere && chance.below(4) > 0)
        out.add(n);
    const reach = 15 + chance.below(90);
    const from = Math.min(start[pair.before] as number, start[pair.after] as number);
    const to = Math.max(endOf(pair.before), endOf(pair.after));
    for (const n of between(schedule, from - reach, to + reach)) if (out.size < mostOut) out.add(n);
    const nodes = [...out].filter((n) => model.nodes[n]?.anyStarts.length !== 0);
    const spread = [1, 10, 40][chance.below(3)] as number;
    for (let n = 0; n < noise.length; n += 1) noise[n] = chance.below(spread);
    for (const { after } of model.freeFrom) noise[after] = (noise[after] as number) + chance.below(holdBack);
    takeOut(schedule, nodes);
    insertAll(
      schedule,
      nodes,
      freshInsertion(schedule, 12, chance.below(2) > 0 ? chance : null, noise, true),
    );
    costOf(schedule, cost);
    if (compareCosts(cost, bestCost) < 0 && latenessOf(prep, schedule) <= bearable) {
      rememberIn(schedule, best);
      bestCost.set(cost);
    } else restore(schedule, best);
  }
  restore(schedule, best);
};
