import { chanceFrom } from "../chance.ts";
import type { Literal } from "../learn/solver.ts";
import type { Project, ProjectAnswer, ProjectEffort } from "./project.ts";
import { lagModel } from "./with-lags-model.ts";
import { nearby } from "./with-lags-nearby.ts";

/** What is known before the search: a schedule that keeps the rules, and a makespan none goes below. */
export type KnownBefore = { readonly starts: readonly number[] | null; readonly bound: number };

/** Conflicts spent with the smallest starts first, before the livelier choices take over. */
const smallestFirst = 300;
/** Conflicts of the first try at a bound from below, and how much longer each round tries. */
const firstProbe = 250;
const longer = 1.4;
/** Tries near the best schedule in one round, and conflicts of each. */
const nearbyTries = 40;
const nearbyConflicts = 150;

/**
 * Schedules a project whose lags may also be greatest lags (RCPSP/max), by a solver that learns from its conflicts
 * (Schutt, Feydy, Stuckey, Wallace 2013). `steps` counts conflicts. A project without greatest lags is welcome too.
 * Once there is a schedule, tries from above (a shorter one) and from below (no schedule that short) take turns.
 */
export const solveWithLags = (
  project: Project,
  effort: ProjectEffort,
  known: KnownBefore = { starts: null, bound: 0 },
): ProjectAnswer => {
  const model = lagModel(project, effort.seed);
  if (model === null) return { status: "none", makespan: null, bound: 0, starts: null };
  const { solver, starts, end } = model;
  const sink = starts.length - 1;
  let best: readonly number[] | null = null;
  let upper = Number.POSITIVE_INFINITY;
  let lower = Math.max(known.bound, solver.least(end));
  let stopped = false;
  const keepGoing = (): boolean => {
    if (!stopped && !effort.keepGoing()) stopped = true;
    return !stopped;
  };
  const spent = (): boolean => stopped || (effort.steps !== null && solver.conflicts() >= effort.steps);

  const improve = (found: readonly number[]): void => {
    best = found;
    upper = found[sink] as number;
    starts.forEach((x, i) => {
      solver.prefer(x, found[i] as number);
    });
    solver.clause([solver.negate(solver.atLeast(end, upper))]);
    effort.tell(upper, lower);
  };

  /** Looks for a schedule of at most `most`; true when that is settled either way. */
  const probe = (most: number, conflicts: number): boolean => {
    const rest = effort.steps === null ? conflicts : Math.min(conflicts, effort.steps - solver.conflicts());
    const open = most >= upper - 1;
    const verdict = solver.solve(open ? [] : [solver.negate(solver.atLeast(end, most + 1))], {
      conflicts: rest,
      keepGoing,
    });
    if (verdict === "yes") improve(starts.map(solver.value));
    else if (verdict === "no") {
      lower = open ? upper : most + 1;
      if (!open) solver.clause([solver.atLeast(end, lower)]);
      effort.tell(best === null ? null : upper, lower);
    }
    return verdict !== "unknown";
  };

  const chance = chanceFrom(effort.seed);
  let share = 0.3;
  /** Looks for shorter schedules near the best one, in stretches that grow when they are searched to the end. */
  const lookNearby = (conflicts: number): void => {
    const until = solver.conflicts() + conflicts;
    for (
      let tries = 0;
      tries < nearbyTries && lower < upper && !spent() && solver.conflicts() < until;
      tries++
    ) {
      const found = best as readonly number[];
      const limits = nearby(found, project.lengths, share, chance);
      const assumed: Literal[] = [];
      starts.forEach((x, i) => {
        solver.prefer(x, found[i] as number);
        const least = limits.least[i] as number;
        const most = limits.most[i] as number;
        if (i === sink) return;
        if (least > solver.least(x)) assumed.push(solver.atLeast(x, least));
        if (most < solver.greatest(x)) assumed.push(solver.negate(solver.atLeast(x, most + 1)));
      });
      const verdict = solver.solve(assumed, { conflicts: nearbyConflicts, keepGoing });
      if (verdict === "yes") improve(starts.map(solver.value));
      else if (verdict === "no" && solver.core().length === 0) lower = upper;
      else share = Math.min(0.9, Math.max(0.05, verdict === "no" ? share * 1.05 : share * 0.95));
    }
  };

  solver.branchOn(starts, smallestFirst);
  if (known.starts !== null) improve(known.starts);
  else
    while (best === null && !spent()) {
      const budget = effort.steps ?? Number.MAX_SAFE_INTEGER;
      if (probe(Number.POSITIVE_INFINITY, budget) && best === null)
        return { status: "none", makespan: null, bound: 0, starts: null };
    }

  let budget = firstProbe;
  let step = Math.max(1, Math.floor((upper - lower) / 8));
  while (lower < upper && !spent()) {
    while (lower < upper && !spent() && probe(upper - 1, budget));
    lookNearby(budget);
    if (lower >= upper || spent()) break;
    const target = Math.min(upper - 1, lower + step - 1);
    if (probe(target, budget)) step *= 2;
    else {
      step = Math.max(1, step >> 1);
      budget = Math.ceil(budget * longer);
    }
  }
  const status = lower >= upper ? "proved" : best === null ? "unknown" : "found";
  return { status, makespan: best === null ? null : upper, bound: Math.min(lower, upper), starts: best };
};
