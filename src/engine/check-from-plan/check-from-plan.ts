import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { brokenCooks } from "./broken-cooks.ts";
import { brokenCourses } from "./broken-courses.ts";
import { brokenLags } from "./broken-lags.ts";
import { brokenOvens } from "./broken-ovens.ts";
import { brokenResources } from "./broken-resources.ts";
import { brokenShape } from "./broken-shape.ts";
import { brokenSpan } from "./broken-span.ts";
import { brokenStays } from "./broken-stays.ts";
import { brokenValues } from "./broken-values.ts";
import { asPlanned, layOut } from "./lay-out.ts";

/**
 * Proves a plan against every demand of its prep; shares no code with the planner. Empty when it holds.
 * Tasks that the plan says it could not place are let go; every task it did place must obey every rule.
 */
export const checkFromPlan = (given: Prep, plan: Plan): readonly Violation[] => {
  const prep = asPlanned(given, plan);
  const laid = layOut(prep, plan);
  return [
    ...brokenShape(prep, plan),
    ...brokenSpan(prep, plan),
    ...brokenLags(prep, plan),
    ...brokenCooks(prep, laid),
    ...brokenResources(prep, laid),
    ...brokenStays(prep, plan),
    ...brokenOvens(prep, laid),
    ...brokenCourses(prep, plan),
    ...brokenValues(prep, plan, laid),
  ];
};
