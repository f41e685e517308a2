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
import { prove, triesBeforeProof } from "./prove.ts";
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
  /** Conflicts that may be spent on proving that there is nothing better; absent: nothing is proved. */
  readonly proof?: number;
  readonly seed: number;
  readonly keepGoing?: () => boolean;
  readonly tell?: (progress: PlanProgress) => void;
};

/** Conflicts for finding a place for what insertion left without one. */
const rescue = 4000;

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
  const chance = chanceFrom(effort.seed);
  const tries = Math.max(0, Math.floor(effort.tries));
  const first = effort.proof === undefined ? tries : Math.min(tries, triesBeforeProof);
  improve(schedule, first, chance, keepGoing, tell);
  // What insertion found no place for, the learning solver often does; from there it is made better again.
  const rescued = effort.proof === undefined && tries > 0 && progressOf(schedule).unplaced > 0;
  const proof = effort.proof ?? (rescued ? rescue : undefined);
  const { bounds, impossible } =
    proof === undefined
      ? { bounds: [], impossible: false }
      : prove(schedule, proof, effort.seed, keepGoing, tell);
  if (!impossible && !levelsOf(schedule, bounds).every((level) => level.proved)) {
    improve(schedule, rescued ? tries : tries - first, chance, keepGoing, tell);
  }
  settle(schedule);
  const plan = summary(prep, schedule, bounds);
  return { value: plan, findings: planFindings(prep, plan, rings) };
};

const progressOf = (schedule: Schedule): PlanProgress => {
  let unplaced = 0;
  for (let n = 0; n < schedule.model.taskCount; n++) if ((schedule.start[n] as number) < 0) unplaced += 1;
  return { unplaced, levels: levelsOf(schedule, []) };
};
