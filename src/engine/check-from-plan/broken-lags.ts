import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { violation } from "./violation.ts";

/** Both sides of every lag between two placed tasks. */
export const brokenLags = (prep: Prep, plan: Plan): readonly Violation[] => {
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  return prep.lags.flatMap((lag) => {
    const before = placed.get(lag.before);
    const after = placed.get(lag.after);
    if (!before || !after) return [];
    const from = before[lag.beforeEdge];
    const to = after[lag.afterEdge];
    const gap = to - from;
    const short = gap < lag.least;
    const long = lag.most !== null && gap > lag.most;
    if (!short && !long) return [];
    const bound = short ? `< ${lag.least}` : `> ${lag.most}`;
    return [violation("lag", [lag.before, lag.after], to, `${lag.reason} ${gap} ${bound}`)];
  });
};
