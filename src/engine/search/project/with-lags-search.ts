import { chanceFrom } from "../chance.ts";
import type { Literal, Verdict } from "../learn/solver.ts";
import type { Project, ProjectAnswer, ProjectEffort } from "./project.ts";
import { lagModel } from "./with-lags-model.ts";
import { nearby } from "./with-lags-nearby.ts";

/** What is known from elsewhere: a schedule that keeps the rules, and a makespan that none goes below. */
export type KnownBefore = { readonly starts: readonly number[] | null; readonly bound: number };

/** A search that can be left and taken up again; what it has learned stays. */
export type LagSearch = {
  /** Tells it what somebody else found. */
  readonly offer: (known: KnownBefore) => void;
  /** Goes on for so many conflicts more (`steps`), or for as long as it may. */
  readonly run: (effort: Omit<ProjectEffort, "seed">) => ProjectAnswer;
};

/** Conflicts spent with the smallest starts first, before the livelier choices take over. */
const smallestFirst = 300;
/** Conflicts of the first try at a bound from below, and how much longer each round tries. */
const firstProbe = 250;
const longer = 1.4;
/** Tries near the best schedule in one round, and the conflicts of each. */
const nearbyTries = 80;
const nearbyConflicts = 100;
/** The share of a round that they may take after a gain; each round without one makes it smaller, down to the least. */
const nearbyShare = 2;
const leastNearbyShare = 0.3;
const shrinks = 0.7;

const without: ProjectAnswer = { status: "none", makespan: null, bound: 0, starts: null };

/**
 * Schedules a project whose lags may also be greatest lags (RCPSP/max), by a solver that learns from its conflicts
 * (Schutt, Feydy, Stuckey, Wallace 2013). Once there is a schedule, three ways take turns: a shorter one from
 * anywhere, a shorter one near the best, and the proof that none is so short, with a length that goes up.
 * Null when lags or demands exclude every schedule at once.
 */
export const lagSearch = (project: Project, seed: number): LagSearch | null => {
  const model = lagModel(project, seed);
  if (model === null) return null;
  const { solver, starts, end } = model;
  const sink = starts.length - 1;
  const chance = chanceFrom(seed);
  let best: readonly number[] | null = null;
  let upper = Number.POSITIVE_INFINITY;
  let lower = solver.least(end);
  let budget = firstProbe;
  let step = 0;
  let share = 0.3;
  let part = nearbyShare;
  let impossible = false;
  let tell: ProjectEffort["tell"] = () => undefined;
  let goesOn: () => boolean = () => true;
  let stopped = false;
  let last = Number.POSITIVE_INFINITY;
  const keepGoing = (): boolean => {
    if (!stopped && !goesOn()) stopped = true;
    return !stopped;
  };
  const spent = (): boolean => stopped || solver.conflicts() >= last;
  const atMost = (makespan: number): Literal => solver.negate(solver.atLeast(end, makespan + 1));

  const improve = (found: readonly number[]): void => {
    best = found;
    upper = found[sink] as number;
    starts.forEach((x, i) => {
      solver.prefer(x, found[i] as number);
    });
    solver.clause([atMost(upper - 1)]);
  };
  const raiseTo = (bound: number): void => {
    lower = bound;
    solver.clause([solver.atLeast(end, bound)]);
  };

  /** One question; a schedule found, or the proof that there is none better, is taken in at once. */
  const ask = (assumed: readonly Literal[], conflicts: number): Verdict => {
    const verdict = solver.solve(assumed, {
      conflicts: Math.max(1, Math.min(conflicts, last - solver.conflicts())),
      keepGoing,
    });
    if (verdict === "yes") improve(starts.map(solver.value));
    else if (verdict === "no" && solver.core().length === 0) {
      if (best === null) impossible = true;
      lower = upper;
    }
    if (verdict !== "unknown") tell(best === null ? null : upper, Math.min(lower, upper));
    return verdict;
  };

  const lookNearby = (found: readonly number[]): void => {
    const limits = nearby(found, project.lengths, share, chance);
    starts.forEach((x, i) => {
      solver.prefer(x, found[i] as number);
    });
    const assumed = starts.flatMap((x, i) => {
      if (i === sink) return [];
      const least = limits.least[i] as number;
      const most = limits.most[i] as number;
      return [
        ...(least > solver.least(x) ? [solver.atLeast(x, least)] : []),
        ...(most < solver.greatest(x) ? [solver.negate(solver.atLeast(x, most + 1))] : []),
      ];
    });
    // A stretch searched to the end may be longer next time; one that was not is too long.
    const verdict = ask(assumed, nearbyConflicts);
    if (verdict === "no") share = Math.min(0.9, share * 1.05);
    else if (verdict === "unknown") share = Math.max(0.05, share * 0.95);
  };

  const open = (): boolean => lower < upper && !spent();

  const round = (): void => {
    while (open() && ask([], budget) === "yes");
    const until = solver.conflicts() + budget * part;
    const before = upper;
    for (let tries = 0; tries < nearbyTries && open() && solver.conflicts() < until; tries++)
      if (best !== null) lookNearby(best);
    part = upper < before ? nearbyShare : Math.max(leastNearbyShare, part * shrinks);
    if (!open()) return;
    if (step === 0) step = Math.max(1, Math.floor((upper - lower) / 8));
    const target = Math.min(upper - 2, lower + step - 1);
    const verdict = target < lower ? "unknown" : ask([atMost(target)], budget);
    if (verdict === "no" && lower < upper) raiseTo(target + 1);
    if (verdict === "unknown") {
      step = Math.max(1, step >> 1);
      budget = Math.ceil(budget * longer);
    } else step *= 2;
  };

  solver.branchOn(starts, smallestFirst);
  return {
    offer: ({ starts: found, bound }) => {
      if (found !== null && (found[sink] as number) < upper) improve(found);
      if (bound > lower) raiseTo(Math.min(bound, upper));
    },
    run: (effort) => {
      tell = effort.tell;
      goesOn = effort.keepGoing;
      stopped = false;
      last = effort.steps === null ? Number.POSITIVE_INFINITY : solver.conflicts() + effort.steps;
      while (best === null && !impossible && !spent()) ask([], Number.MAX_SAFE_INTEGER);
      while (best !== null && open()) round();
      if (impossible) return without;
      const status = lower >= upper ? "proved" : best === null ? "unknown" : "found";
      return { status, makespan: best === null ? null : upper, bound: Math.min(lower, upper), starts: best };
    },
  };
};
