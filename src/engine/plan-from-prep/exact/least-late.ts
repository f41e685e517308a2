import { learningSolver } from "../../search/learn/learning-solver.ts";
import type { Memory } from "../memory.ts";
import type { Model } from "../model.ts";
import { nowhere } from "../schedule.ts";
import { encode } from "./encode.ts";
import type { Choice } from "./encode-calendar.ts";

/** Minutes that every course may be late, tried from the most down: the more, the sooner a schedule is found. */
const steps = [360, 120, 60, 30, 15, 5, 0];

/** Conflicts for one step, and the caller's clock. */
export type LateLimit = { readonly conflicts: number; readonly keepGoing: () => boolean };

/**
 * A whole schedule in which no course is as late as `below` minutes, by steps as far down as the learning solver goes;
 * null when not even the first step is found. What else is good or bad about it is not looked at.
 */
export const leastLate = (model: Model, below: number, seed: number, limit: LateLimit): Memory | null => {
  let found: Memory | null = null;
  for (const late of steps) {
    if (late >= below) continue;
    const solver = learningSolver(seed);
    const mostLate = model.goals.map(() => late);
    const { starts, cooks, ovens } = encode(model, solver, {
      tasks: null,
      mostLate,
      always: true,
      anchored: true,
    });
    if (solver.solve([], limit) !== "yes") return found;
    const pick = (choices: readonly Choice[]): number =>
      choices.find(({ chosen }) => chosen === null || solver.holds(chosen))?.index ?? -1;
    const start = Int32Array.from(starts, (x) => (x === null ? nowhere : solver.value(x)));
    found = {
      start,
      cook: Int16Array.from(cooks, pick),
      oven: Int16Array.from(ovens, pick),
      slip: Int32Array.from(
        model.landing,
        (node, goal) => (start[node] as number) - (model.due[goal] as number),
      ),
    };
  }
  return found;
};
