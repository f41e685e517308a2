import type { Finding } from "../findings/finding.ts";
import type { Outcome } from "../model/outcome.ts";
import type { LevelValue, Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { chanceFrom } from "../search/chance.ts";
import { build, mostSlip, settle } from "./build.ts";
import { clashingLags } from "./clashing-lags.ts";
import { compile } from "./compile.ts";
import { withoutHopeless } from "./hopeless.ts";
import { improve } from "./improve.ts";
import { planFindings } from "./plan-findings.ts";
import { emptySchedule, type Schedule } from "./schedule.ts";
import { levelsOf, summary } from "./summary.ts";

/** What is known while a plan is looked for: how many tasks have no place, and each level. */
export type PlanProgress = {
  readonly unplaced: number;
  readonly levels: readonly LevelValue[];
};

/**
 * How hard to look. Work is counted in tries, never in seconds, so that the same prep gives the same plan everywhere;
 * a caller with a clock may end the search sooner, and hears of the first plan and of each better one.
 */
export type PlanEffort = {
  readonly tries: number;
  readonly seed: number;
  readonly keepGoing?: () => boolean;
  readonly tell?: (progress: PlanProgress) => void;
};

/** Places every task. The plan it returns has not been checked; the pipeline has the checker do that. */
export const planFromPrep = (prep: Prep, effort: PlanEffort): Outcome<Plan, Finding> => {
  const { model: kept, rings } = clashingLags(compile(prep));
  const { model, paths } = withoutHopeless(kept, mostSlip);
  const schedule = emptySchedule(model, paths);
  const keepGoing = effort.keepGoing ?? (() => true);
  const tell = (): void => effort.tell?.(progressOf(schedule));
  build(schedule, null, keepGoing);
  settle(schedule);
  tell();
  improve(schedule, Math.max(0, Math.floor(effort.tries)), chanceFrom(effort.seed), keepGoing, tell);
  settle(schedule);
  const plan = summary(prep, schedule);
  return { value: plan, findings: planFindings(prep, plan, rings) };
};

const progressOf = (schedule: Schedule): PlanProgress => {
  let unplaced = 0;
  for (let n = 0; n < schedule.model.taskCount; n++) if ((schedule.start[n] as number) < 0) unplaced += 1;
  return { unplaced, levels: levelsOf(schedule, []) };
};
