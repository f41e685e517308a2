import type { Finding } from "../findings/finding.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep, Task } from "../model/prep.ts";
import { chanceFrom } from "../search/chance.ts";
import { build, mostSlip, settle, sketch } from "./build.ts";
import { clashingLags } from "./clashing-lags.ts";
import { compile } from "./compile.ts";
import { ease } from "./ease.ts";
import { leastLate } from "./exact/least-late.ts";
import { follow } from "./follow.ts";
import { guestsBefore } from "./guests-before.ts";
import { guestsFirst } from "./guests-first.ts";
import { withoutHopeless } from "./hopeless.ts";
import { improve } from "./improve.ts";
import { longestPaths } from "./longest-paths.ts";
import { remember, restore } from "./memory.ts";
import type { Model } from "./model.ts";
import { compareCosts, costOf } from "./objective.ts";
import { standing } from "./order.ts";
import type { PlanEffort, PlanProgress } from "./plan-effort.ts";
import { planFindings } from "./plan-findings.ts";
import { prove, triesBeforeProof } from "./prove.ts";
import { emptySchedule, type Schedule } from "./schedule.ts";
import { placeSpare } from "./spare.ts";
import { levelsOf, summary } from "./summary.ts";
import { tidyWashing } from "./tidy-washing.ts";
import { planWithWays } from "./ways.ts";

/** Conflicts for finding a place for what insertion left without one: so many a try, so many at most, and for each step of lateness. */
const rescue = { each: 20, most: 4000, step: 2500 };

/** Conflicts spent on whether there is a whole schedule, when insertion found none, before anything else is tried. */
const firstLook = 300;

/** Conflicts of the first turn of a long proof, and by how much more the search does between turns than before the first. */
const firstTurn = 50_000;
const triesEachTurn = 15;

/** Places every task. The plan it returns has not been checked; the pipeline has the checker do that. */
export const planFromPrep = (prep: Prep, effort: PlanEffort): Outcome<Plan, Finding> =>
  prep.tasks.some((task) => (task.ways ?? []).length > 0)
    ? planWithWays(prep, effort, planOneWay)
    : planOneWay(prep, effort);

/** Work, its plan, and the washing-up that the plan leaves for after the service. */
export type WorkPlanned = {
  readonly prep: Prep;
  readonly plan: Plan;
  readonly left: readonly Task[];
};

/** Places every task but the washing-up that nothing waits for in the plan. */
export const planWork = (prep: Prep, effort: PlanEffort): Outcome<WorkPlanned, Finding> => {
  if (prep.tasks.every((task) => (task.ways ?? []).length === 0)) return planTidily(prep, effort, true);
  const { value, findings } = planFromPrep(prep, effort);
  return { value: { prep, plan: value, left: [] }, findings };
};

/** Places every task as its segments say, whatever other ways there are. */
const planOneWay = (prep: Prep, effort: PlanEffort): Outcome<Plan, Finding> => {
  const { value, findings } = planTidily(prep, effort, false);
  return { value: value.plan, findings };
};

const planTidily = (given: Prep, effort: PlanEffort, tidy: boolean): Outcome<WorkPlanned, Finding> => {
  let prep = given;
  let left: readonly Task[] = [];
  const { model: kept, rings } = clashingLags(compile(prep));
  const { model, paths } = withoutHopeless(kept, mostSlip);
  let schedule = emptySchedule(model, paths);
  const keepGoing = effort.keepGoing ?? (() => true);
  const tell = (): void => effort.tell?.(progressOf(schedule));
  const chance = chanceFrom(effort.seed);
  const tries = Math.max(0, Math.floor(effort.tries));
  let triesLeft = tries;
  const better = (most: number, going = keepGoing): void => {
    const now = Math.min(triesLeft, most);
    triesLeft -= now;
    improve(schedule, now, chance, going, tell);
  };
  const proved = (conflicts: number, late: number | null = null): ReturnType<typeof prove> =>
    prove(schedule, conflicts, effort.seed, keepGoing, tell, late);
  const some = triesBeforeProof * model.taskCount;
  const missing = (): number => progressOf(schedule).unplaced;
  const whole = (): boolean => missing() === 0;

  let proof: ReturnType<typeof prove> = { bounds: [], impossible: false };
  if (effort.proof !== undefined) {
    // With every course on time most often little is left without a place, and the learning solver finds one for it.
    sketch(schedule);
    if (!whole()) proof = proved(Math.min(effort.proof, firstLook), 0);
  }
  if (!whole()) build(schedule, chance, keepGoing);
  settle(schedule);
  tell();
  if (effort.proof !== undefined && !whole()) {
    // Of what cannot be done at all, as much as a few tries find. Else, where little has no place yet, a few tries often
    // find one, and the less it is the quicker; then the learning solver is asked.
    const few = model.taskCount * (proof.impossible ? 0.5 : 2 / missing() ** 2);
    better(Math.floor(few), () => keepGoing() && !whole());
    if (!whole() && !proof.impossible) proof = proved(Math.min(effort.proof, firstLook));
  }
  if (!proof.impossible) better(effort.proof === undefined ? tries : some);
  const latest = whole() ? Math.max(0, ...schedule.slip) : Number.POSITIVE_INFINITY;
  const sooner =
    effort.proof === undefined && tries > 0 && latest > 0 && !givesUp(model)
      ? leastLate(model, latest, effort.seed, { conflicts: rescue.step, keepGoing })
      : null;
  if (sooner) {
    // Courses land sooner as the learning solver has it; from there it is made better again, if it comes out better.
    const before = { cost: costOf(schedule), memory: remember(schedule) };
    restore(schedule, sooner);
    triesLeft = tries;
    better(tries);
    if (compareCosts(costOf(schedule), before.cost) > 0) restore(schedule, before.memory);
  }
  if (!whole() && tries > 0 && !proof.impossible) {
    // What insertion found no place for, the learning solver often does; from there it is made better again.
    proof = proved(Math.min(effort.proof ?? tries * rescue.each, rescue.most));
    if (effort.proof === undefined) triesLeft = tries;
    if (!proof.impossible) better(effort.proof === undefined ? tries : some * 4);
  }
  const isProved = (): boolean => levelsOf(schedule, proof.bounds).every((level) => level.proved);
  // A proof that takes long takes turns with the search, and each turn is twice as long as the one before. What was not found
  // with so many conflicts is not looked for with as many again.
  let conflicts = (effort.proof ?? 0) - (whole() ? 0 : rescue.most);
  for (let turn = firstTurn; conflicts > 0 && !proof.impossible && !isProved() && keepGoing(); turn *= 2) {
    const { bounds, impossible } = proved(Math.min(turn, conflicts));
    proof = { bounds: bounds.map((bound, l) => Math.max(bound, proof.bounds[l] ?? 0)), impossible };
    conflicts -= turn;
    if (conflicts > 0 && !impossible && !isProved()) better(some * triesEachTurn);
  }
  if (!proof.impossible && !isProved()) better(triesLeft);
  settle(schedule);
  let { bounds } = proof;
  const done = isProved();
  if (tidy && model.stays.length > 0 && whole()) {
    const tidied = tidyWashing(prep, standing(prep, schedule));
    const fewer = clashingLags(compile(tidied.prep)).model;
    const bare = emptySchedule(fewer, longestPaths(fewer.nodes.length, fewer.arcs));
    if (tidied.prep.tasks.length < prep.tasks.length) follow(bare, tidied.placed);
    if (costOf(bare)[0] === 0) {
      ({ prep, left } = tidied);
      schedule = bare;
      // With less to wash up there may be something better: nothing is proved of this work.
      bounds = [];
    }
  }
  if (tries > 0 && !done) {
    guestsFirst(schedule);
    if (prep.spareTime !== undefined) guestsBefore(prep, schedule, chance, keepGoing);
    ease(schedule);
  }
  if (tries > 0) placeSpare(prep, schedule);
  const summed = summary(prep, schedule, bounds);
  const plan: Plan = proof.impossible && isSure(prep, kept, model) ? { ...summed, impossible: true } : summed;
  return { value: { prep, plan, left }, findings: planFindings(prep, plan, rings) };
};

/**
 * True when a proof that no schedule is whole is one for the prep too: no task was given up only because its course would be
 * too late, and no course may end with another plate than the one that is taken for its last.
 */
const isSure = (prep: Prep, kept: Model, model: Model): boolean =>
  (givesUp(kept) || !givesUp(model)) &&
  prep.courses.every((goal) => goal.landsWith === "first" || goal.plateTasks.length < 2);

/** True when some task was given up beforehand: then no schedule is whole. */
const givesUp = (model: Model): boolean =>
  model.nodes.some((node, n) => n < model.taskCount && node.anyStarts.length === 0);

const progressOf = (schedule: Schedule): PlanProgress => {
  let unplaced = 0;
  for (let n = 0; n < schedule.model.taskCount; n++) if ((schedule.start[n] as number) < 0) unplaced += 1;
  return { unplaced, levels: levelsOf(schedule, []) };
};
