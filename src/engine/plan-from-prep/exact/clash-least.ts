import { moment } from "../../measure/units.ts";
import type { Easing } from "../../model/clash.ts";
import type { Placed } from "../../model/plan.ts";
import type { Prep } from "../../model/prep.ts";
import { compile } from "../compile.ts";
import type { Sized } from "./clash-changes.ts";
import { oracleFor, type Purse } from "./clash-oracle.ts";
import type { Answer } from "./clash-smallest.ts";

/** A size of a change that does, and whether one less was shown not to. */
export type Least = { readonly size: number; readonly change: Easing; readonly sure: boolean };

/** What is asked of the work with a change in it. */
export type Question = {
  /** Names of the tasks asked about; null for all. */
  readonly tasks: ReadonlySet<string> | null;
  /** Minutes each course, by its place in the sitting, may be late. */
  readonly mostLate: (course: number) => number | null;
  /** True when a plan is to be made of it, which takes the longest plate of a course for its last. */
  readonly anchored: boolean;
};

/** An answer, and where the tasks asked about can stand when it fits. */
export type Told = { readonly answer: Answer; readonly placed: readonly Placed[] };

/** Whether some of the work can be done with an easing made. */
export const askWith = (prep: Prep, question: Question, purse: Purse): Told => {
  if (!purse.keepGoing()) return { answer: "unknown", placed: [] };
  const model = compile(prep);
  const { tasks } = question;
  const asked =
    tasks === null ? null : new Set(prep.tasks.flatMap((task, n) => (tasks.has(task.id) ? [n] : [])));
  const mostLate = model.goals.map((goal) => question.mostLate(goal.course));
  const oracle = oracleFor(model, { tasks: asked, mostLate, anchored: question.anchored }, purse);
  const answer = oracle.ask(oracle.groups);
  if (answer !== "fits") return { answer, placed: [] };
  const spots = oracle.spots();
  const placed = prep.tasks.flatMap((task, n): Placed[] => {
    const spot = spots[n];
    if (!spot) return [];
    const start = spot.start + model.origin;
    return [
      {
        task: task.id,
        start: moment(start),
        end: moment(start + (model.nodes[n]?.length ?? 0)),
        segments: [],
        cook: model.cooks[spot.cook] ?? null,
        oven: model.ovenIds[spot.oven] ?? null,
        because: [],
      },
    ];
  });
  return { answer, placed };
};

/**
 * The least size, from the given one on, of a change with which a question is answered by "it fits"; by halves, since more never does less.
 * That nothing below the first size does is the caller's to know.
 * Null when not even the most of it does, as far as could be told.
 */
export const leastSize = (sized: Sized, from: number, fits: (change: Easing) => Answer): Least | null => {
  if (from >= 1 && from <= sized.most && fits(sized.at(from)) === "fits") {
    return { size: from, change: sized.at(from), sure: true };
  }
  if (from >= sized.most || fits(sized.at(sized.most)) !== "fits") return null;
  let fails = from;
  let works = sized.most;
  let sure = true;
  // Small sizes first: the least is seldom near the most.
  for (let step = 1; fails + step < works; step *= 2) {
    const answer = fits(sized.at(fails + step));
    if (answer === "fits") {
      works = fails + step;
      break;
    }
    if (answer === "unknown") {
      sure = false;
      break;
    }
    fails += step;
  }
  while (works - fails > 1) {
    const mid = Math.floor((works + fails) / 2);
    const answer = fits(sized.at(mid));
    if (answer === "fits") works = mid;
    else {
      if (answer === "unknown") sure = false;
      fails = mid;
    }
  }
  return { size: works, change: sized.at(works), sure };
};
