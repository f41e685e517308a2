import { minutes } from "../../measure/units.ts";
import type { Clash, ClashDemand, Easing, WayOut } from "../../model/clash.ts";
import type { Placed, Plan } from "../../model/plan.ts";
import type { Prep } from "../../model/prep.ts";
import {
  courseChange,
  lagChange,
  otherHands,
  ovenChangeOf,
  resourceChange,
  type Sized,
  shiftChanges,
  withChange,
} from "./clash-changes.ts";
import { leastHands } from "./clash-hands.ts";
import { askWith, type Least, leastSize, type Question } from "./clash-least.ts";
import type { Purse } from "./clash-oracle.ts";
import { isSafety, longestHotWait } from "./clash-safety.ts";
import type { Answer } from "./clash-smallest.ts";

/** Makes a plan of a prep, beginning with where its tasks are known to stand. */
export type Replan = (prep: Prep, placed: readonly Placed[]) => Plan;

/** How the ways out of one clash are looked for. */
export type Search = {
  readonly prep: Prep;
  readonly plan: Plan;
  readonly purse: Purse;
  /** The tasks that clash, and all that must be possible once they do not. */
  readonly part: Question;
  readonly whole: Question;
  /** Makes a plan of a prep, from where its tasks may stand. */
  readonly replan: Replan;
  /** Whether a plan is one in which the clash is gone. */
  readonly solved: (plan: Plan) => boolean;
  /** Minutes late in all that a plan of the same effort has without any easing; of the two, the less. */
  readonly lateAnyway: number;
  /** Where tasks can stand with an easing, by its text. */
  readonly known: Map<string, readonly Placed[]>;
};

/** Longest that a lag is let out to see whether that helps at all, minutes. */
const farOut = 4 * 24 * 60;
/** Longest that a course is moved, minutes. */
const farCourse = 6 * 60;

/** The least change that makes all of the work possible, for each demand of a clash; and the changes that may be offered. */
export const waysOf = (
  search: Search,
  demands: readonly ClashDemand[],
  clash: number,
): { readonly leastChange: Clash["leastChange"]; readonly ways: readonly WayOut[] } => {
  const ways: WayOut[] = [];
  const tried = new Set<string>();
  const offer = (least: Least | null): void => {
    if (!least || tried.has(JSON.stringify(least.change))) return;
    tried.add(JSON.stringify(least.change));
    const way = tryOut(search, least, clash);
    if (way) ways.push(way);
  };
  const leastChange = demands.map((demand) => {
    if (demand.kind === "lag") {
      const lag = search.prep.lags[demand.lag];
      const sized = lagChange(search.prep, demand.lag, demand.side, farOut);
      if (!lag || !sized || isSafety(search.prep, lag, demand.side)) return null;
      const least = leastForAll(search, sized);
      if (least && mayBeOffered(search.prep, least.change)) offer(least);
      return least?.sure ? minutes(least.size) : null;
    }
    for (const sized of sizedFor(search.prep, demand)) offer(leastForAll(search, sized));
    if (demand.kind === "hands" || demand.kind === "open") offer(moreHands(search));
    return null;
  });
  return { leastChange, ways };
};

/**
 * A wait may be let out as far as hot food may wait at all, or as far as need be where whoever set the limit did so
 * in their own words; a rest may be cut short, not turned about.
 */
const mayBeOffered = (prep: Prep, change: Easing): boolean =>
  change.kind !== "lag" ||
  (change.side === "most"
    ? change.minutes <= longestHotWait || prep.lags[change.lag]?.why !== undefined
    : change.minutes >= 0);

const sizedFor = (prep: Prep, demand: ClashDemand): readonly Sized[] => {
  switch (demand.kind) {
    case "shift":
      return shiftChanges(prep, demand.cook);
    case "open":
      return prep.crew.flatMap((member) => shiftChanges(prep, member.name));
    case "resource": {
      const most = Math.max(
        1,
        ...prep.tasks.flatMap((t) =>
          t.segments.flatMap((s) =>
            s.uses.filter((u) => u.resource === demand.resource).map((u) => u.amount),
          ),
        ),
      );
      // Burners and machines come one by one; litres as much as the largest thing needs.
      return [resourceChange(demand.resource, Number.isInteger(most) && most < 10 ? 1 : Math.ceil(most / 4))];
    }
    case "shelves":
    case "oven-heat":
      return [ovenChangeOf(prep)];
    case "due":
      return demand.side === "most" ? [courseChange(demand.course, farCourse)] : [];
    case "hands":
    case "lag":
      return [];
  }
};

/** First what the clash itself asks for, which is proved; then whether all of the work is possible with it. */
const leastForAll = (search: Search, sized: Sized): Least | null => {
  const part = leastSize(sized, 1, (change) => ask(search, search.part, change));
  if (!part) return null;
  const whole = leastSize({ ...sized, most: Math.max(part.size, sized.most) }, part.size, (change) =>
    fitsAll(search, change),
  );
  return whole && { ...whole, sure: whole.sure && part.sure };
};

const ask = (search: Search, question: Question, easing: Easing): Answer =>
  askWith(withChange(search.prep, easing), question, search.purse).answer;

/** The solver is asked first; what it gives up on may still be planned. */
const fitsAll = (search: Search, easing: Easing): Answer => {
  const { answer, placed } = askWith(withChange(search.prep, easing), search.whole, search.purse);
  if (answer === "fits") search.known.set(JSON.stringify(easing), placed);
  if (answer !== "unknown" || !search.purse.keepGoing()) return answer;
  return search.solved(planWith(search, easing)) ? "fits" : "unknown";
};

/** Lateness that is asked for in turn when work that had no place has one, minutes a course. */
const lessLate = [0, 15, 60, 180];

/** A plan with an easing, from where the solver put the tasks, or else from where they stand. */
const planWith = (search: Search, easing: Easing): Plan => {
  const eased = withChange(search.prep, easing);
  const known = search.known.get(JSON.stringify(easing));
  if (known === undefined) return search.replan(eased, search.plan.placed);
  for (const late of search.plan.unplaced.length > 0 ? lessLate : []) {
    const { answer, placed } = askWith(eased, { ...search.whole, mostLate: () => late }, search.purse);
    if (answer === "fits") return search.replan(eased, placed);
  }
  return search.replan(eased, known);
};

/** Longer hours of one cook that free several clashes at once; what frees one only is found with that one. */
export const waysForAll = (search: Search): readonly WayOut[] =>
  search.prep.crew
    .flatMap((member) => shiftChanges(search.prep, member.name))
    .flatMap((sized) => {
      const least = leastSize(sized, 1, (easing) => fitsAll(search, easing));
      return (least && tryOut(search, least, null)) ?? [];
    });

const moreHands = (search: Search): Least | null => {
  const shifts = search.prep.crew.flatMap((member) => member.shifts);
  const dues = search.prep.courses.map((goal) => goal.due as number);
  const to = Math.max(...shifts.map((s) => s.to as number), ...dues);
  const from = Math.max(to - 14 * 60, Math.min(...shifts.map((s) => s.from as number), ...dues));
  if (!Number.isFinite(to) || !Number.isFinite(from)) return null;
  const part = leastHands({ from, to }, (change) => ask(search, search.part, change));
  if (!part) return null;
  if (fitsAll(search, part.change) === "fits") return part;
  const whole = leastHands({ from, to }, (change) => fitsAll(search, change));
  return whole && { ...whole, sure: false };
};

/** What the plan is with an easing; null when it is no better than it was, or than looking again alone makes it. */
export const tryOut = (search: Search, least: Least, clash: number | null): WayOut | null => {
  const { plan, lateAnyway } = search;
  if (!search.purse.keepGoing()) return null;
  const after = planWith(search, least.change);
  const better =
    after.unplaced.length < plan.unplaced.length ||
    (after.unplaced.length === 0 && after.objective.lateMinutes < lateAnyway);
  if (!better) return null;
  return {
    change: least.change,
    clash,
    least: least.sure,
    after: {
      status: after.status,
      unplaced: after.unplaced.length,
      lateMinutes: after.objective.lateMinutes,
      tasks: doneBy(least.change, after),
    },
  };
};

/** Tasks done by the hands, or in the hours, that a change adds. */
const doneBy = (change: Easing, plan: Plan): readonly string[] => {
  const within = (cook: string, from: number, to: number): readonly string[] =>
    plan.placed.filter((p) => p.cook === cook && p.start < to && p.end > from).map((p) => p.task);
  switch (change.kind) {
    case "hands":
      return within(otherHands, change.from, change.to);
    case "day-before":
      return within(change.cook, change.from, change.to);
    case "shift":
      return change.end === "from"
        ? within(change.cook, change.at, change.was)
        : within(change.cook, change.was, change.at);
    default:
      return [];
  }
};
