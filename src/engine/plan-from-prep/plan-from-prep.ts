import type { Finding } from "../findings/finding.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { build, mostSlip, settle } from "./build.ts";
import { chanceFrom } from "./chance.ts";
import { clashingLags } from "./clashing-lags.ts";
import { compile } from "./compile.ts";
import { withoutHopeless } from "./hopeless.ts";
import { improve } from "./improve.ts";
import { planFindings } from "./plan-findings.ts";
import { emptySchedule } from "./schedule.ts";
import { summary } from "./summary.ts";

/** How hard to look. Work is counted in tries, never in seconds, so that the same prep gives the same plan everywhere. */
export type PlanEffort = { readonly tries: number; readonly seed: number };

/** Places every task. The plan it returns has not been checked; the pipeline has the checker do that. */
export const planFromPrep = (prep: Prep, effort: PlanEffort): Outcome<Plan, Finding> => {
  const { model: kept, rings } = clashingLags(compile(prep));
  const { model, paths } = withoutHopeless(kept, mostSlip);
  const schedule = emptySchedule(model, paths);
  build(schedule, null);
  settle(schedule);
  improve(schedule, Math.max(0, Math.floor(effort.tries)), chanceFrom(effort.seed));
  const plan = summary(prep, schedule);
  return { value: plan, findings: planFindings(prep, plan, rings) };
};
