import type { Finding } from "../findings/finding.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { chanceFrom } from "../search/chance.ts";
import { mostSlip } from "./build.ts";
import { clashingLags } from "./clashing-lags.ts";
import { compile } from "./compile.ts";
import { follow, putAsPlanned } from "./follow.ts";
import { withoutHopeless } from "./hopeless.ts";
import { improve } from "./improve.ts";
import { longestPaths } from "./longest-paths.ts";
import type { PlanEffort } from "./plan-effort.ts";
import { planFindings } from "./plan-findings.ts";
import { emptySchedule } from "./schedule.ts";
import { summary } from "./summary.ts";

/**
 * Places every task as an earlier plan has it, as far as that still goes, so that as little as can be changes for those
 * who work by it. Only with tries is a better one looked for from there.
 */
export const followPlan = (
  prep: Prep,
  earlier: readonly Placed[],
  effort: PlanEffort,
): Outcome<Plan, Finding> => {
  const { model: kept, rings } = clashingLags(compile(prep));
  const { model, paths } = withoutHopeless(kept, mostSlip);
  const schedule = emptySchedule(model, paths);
  follow(schedule, earlier);
  const keepGoing = effort.keepGoing ?? (() => true);
  if (effort.tries > 0) improve(schedule, effort.tries, chanceFrom(effort.seed), keepGoing, () => {});
  const plan = summary(prep, schedule);
  return { value: plan, findings: planFindings(prep, plan, rings) };
};

/** A plan out of places that were found elsewhere, as they are: what it costs, when its courses land, what pins each task. */
export const planOfPlaces = (prep: Prep, places: readonly Placed[]): Outcome<Plan, Finding> => {
  const model = compile(prep);
  const schedule = emptySchedule(model, longestPaths(model.nodes.length, model.arcs));
  putAsPlanned(schedule, places);
  const plan = summary(prep, schedule);
  return { value: plan, findings: planFindings(prep, plan, []) };
};
