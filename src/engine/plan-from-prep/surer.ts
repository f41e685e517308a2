import type { Prep } from "../model/prep.ts";
import type { Chance } from "../search/chance.ts";
import { insertAll, takeOut } from "./insert.ts";
import { freshInsertion } from "./insertion.ts";
import { latenessOf } from "./lateness.ts";
import { remember, rememberIn, restore } from "./memory.ts";
import { between } from "./neighbourhoods.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/** Repairs at most, and tasks taken out in one. */
const tries = 60;
const mostOut = 14;
/** Minutes before a course from which work is taken out. */
const reach = 180;

/**
 * Takes out some of the work before a course and puts it in again in another order, and keeps what makes courses surer.
 * `more` gives what starts cost besides their lateness, null for those that may not be.
 */
export const makeSurer = (
  prep: Prep,
  schedule: Schedule,
  plates: Uint8Array,
  chance: Chance,
  more: (start: Int32Array) => number | null,
): void => {
  const { model, start } = schedule;
  const best = remember(schedule);
  let least = latenessOf(prep, schedule) + (more(start) ?? 0);
  const noise = new Int32Array(model.nodes.length);
  for (let i = 0; i < tries; i += 1) {
    const due = model.due[chance.below(model.due.length)] ?? 0;
    const from = due - chance.below(reach);
    const nodes = between(schedule, from, from + 30 + chance.below(60), (n) => plates[n] !== 1);
    while (nodes.length > mostOut) nodes.splice(chance.below(nodes.length), 1);
    if (nodes.length < 2) continue;
    const spread = [5, 20, 60][chance.below(3)] as number;
    for (let n = 0; n < noise.length; n += 1) noise[n] = chance.below(spread);
    takeOut(schedule, nodes);
    insertAll(schedule, nodes, freshInsertion(schedule, 8, chance, noise, true));
    const waits = start.every((at) => at !== nowhere) ? more(start) : null;
    const now = waits === null ? Number.POSITIVE_INFINITY : latenessOf(prep, schedule) + waits;
    if (now < least) {
      rememberIn(schedule, best);
      least = now;
    } else restore(schedule, best);
  }
};
