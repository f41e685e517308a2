import type { Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { troubleOf } from "./exact/clash-trouble.ts";
import type { Replan } from "./exact/clash-ways.ts";
import { followPlan } from "./follow-plan.ts";

/** How hard to look for what stands in the way of a plan, in conflicts and tries, never in seconds. */
export type ExplainEffort = {
  /** Conflicts for all questions about what clashes, and as many again about what frees it. */
  readonly conflicts: number;
  /** Tries for each plan that is made with a change in it. */
  readonly tries: number;
  readonly seed: number;
  readonly keepGoing?: () => boolean;
};

/** Conflicts for one question. */
const each = 2500;

/**
 * The plan with what stands in its way: for one that is late or not whole, smallest demands that clash, and the least
 * changes that free it, each tried on all of the work. A plan that is on time has nothing in its way.
 */
export const explainPlan = (prep: Prep, plan: Plan, effort: ExplainEffort): Plan => {
  const keepGoing = effort.keepGoing ?? (() => true);
  const replan: Replan = (changed, placed) =>
    followPlan(changed, placed, { tries: effort.tries, seed: effort.seed, keepGoing }).value;
  const purse = () => ({ each, left: effort.conflicts, keepGoing });
  return { ...plan, ...troubleOf(prep, plan, replan, { find: purse(), free: purse() }) };
};
