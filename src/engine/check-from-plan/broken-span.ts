import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { violation } from "./violation.ts";

/** Where the problem has a beginning and an end, nothing stands before the one or ends after the other. */
export const brokenSpan = (prep: Prep, plan: Plan): readonly Violation[] => {
  const { span } = prep;
  if (!span) return [];
  return plan.placed.flatMap(({ task, start, end }) => {
    if (start >= span.from && end <= span.to) return [];
    return [violation("outside-span", [task], start, `${start}-${end}, not in ${span.from}-${span.to}`)];
  });
};
