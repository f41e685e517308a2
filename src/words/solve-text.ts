import type { ProjectStatus } from "#engine/index.ts";

/** Headings of the answer to a scheduling problem, in the terms of the field. */
export const solveHeadings = {
  status: "Status",
  makespan: "Makespan",
  bound: "bound",
  gap: "Gap",
  firstAt: "First plan at",
  bestAt: "Best plan at",
  seconds: "Took",
  schedule: "Start of each activity, in the order of the file",
  conflict: "Demands that cannot all be met",
} as const;

/** The status of a project in the terms of the field. */
export const statusOfProject: { readonly [S in ProjectStatus]: string } = {
  proved: "optimal",
  found: "feasible",
  none: "infeasible",
  unknown: "unknown",
};
