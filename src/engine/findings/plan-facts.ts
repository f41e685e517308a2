import type { Severity } from "./severity.ts";

/** Facts of each finding that the work and its plan can make. */
export type PlanFacts = {
  "station-missing": { title: string; station: string };
  "nobody-on-shift": { course: string };
  "course-late": { course: string; minutes: number };
  "task-unplaced": { verb: string; title: string };
  "plan-broken": { rule: string; detail: string };
  "sitting-value-bad": { path: string; why: string };
};

export const planSeverity: { readonly [C in keyof PlanFacts]: Severity } = {
  "station-missing": "stop",
  "nobody-on-shift": "stop",
  "course-late": "warn",
  "task-unplaced": "stop",
  "plan-broken": "stop",
  "sitting-value-bad": "stop",
};
