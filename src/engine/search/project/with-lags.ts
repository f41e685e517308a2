import type { Project, ProjectAnswer, ProjectEffort } from "./project.ts";
import { type KnownBefore, lagSearch } from "./with-lags-search.ts";

/**
 * Schedules a project whose lags may also be greatest lags (RCPSP/max), and proves what it can; `steps` counts
 * conflicts. A project without greatest lags is welcome too, and so is what is known of it.
 */
export const solveWithLags = (
  project: Project,
  effort: ProjectEffort,
  known: KnownBefore = { starts: null, bound: 0 },
): ProjectAnswer => {
  const search = lagSearch(project, effort.seed);
  if (search === null) return { status: "none", makespan: null, bound: 0, starts: null };
  search.offer(known);
  return search.run(effort);
};
