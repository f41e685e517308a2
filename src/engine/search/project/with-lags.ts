import { learningSolver } from "../learn/learning-solver.ts";
import type { Unknown } from "../learn/solver.ts";
import type { Project, ProjectAnswer, ProjectEffort } from "./project.ts";
import { enoughTime, waysOf } from "./with-lags-paths.ts";

/**
 * Schedules a project whose lags may also be greatest lags (RCPSP/max), by a solver that learns from its conflicts
 * (Schutt, Feydy, Stuckey, Wallace 2013). `steps` counts conflicts. A project without greatest lags is welcome too.
 */
export const solveWithLags = (project: Project, effort: ProjectEffort): ProjectAnswer => {
  const none: ProjectAnswer = { status: "none", makespan: null, bound: 0, starts: null };
  const ways = waysOf(project);
  if (ways === null) return none;
  const { count, far } = ways;
  if (project.demands.some((row) => row.some((d, r) => d > (project.capacities[r] ?? 0)))) return none;
  const sink = count - 1;
  const horizon = Math.max(enoughTime(project), far[sink] as number);
  const solver = learningSolver(effort.seed);
  const starts: readonly Unknown[] = project.lengths.map((_, i) =>
    solver.integer(far[i] as number, horizon - (far[i * count + sink] as number)),
  );
  const end = starts[sink] as Unknown;
  project.lengths.forEach((length, i) => {
    if (i !== sink && far[i * count + sink] === length) solver.difference(starts[i] as Unknown, end, length, null);
  });
  for (const { from, to, weight } of project.lags)
    solver.difference(starts[from] as Unknown, starts[to] as Unknown, weight, null);
  project.capacities.forEach((capacity, r) => {
    const uses = project.lengths.flatMap((length, i) => {
      const amount = project.demands[i]?.[r] ?? 0;
      return length > 0 && amount > 0
        ? [{ start: starts[i] as Unknown, offset: 0, length, amount, present: null }]
        : [];
    });
    if (uses.reduce((sum, use) => sum + use.amount, 0) > capacity) solver.cumulative(uses, capacity, null);
  });
  solver.branchOn(starts, 300);

  let best: readonly number[] | null = null;
  const left = (): number | null =>
    effort.steps === null ? null : Math.max(1, effort.steps - solver.conflicts());
  const answer = (status: ProjectAnswer["status"]): ProjectAnswer => ({
    status,
    makespan: best === null ? null : (best[sink] as number),
    bound: status === "proved" ? (best?.[sink] as number) : solver.least(end),
    starts: best,
  });
  for (;;) {
    const verdict = solver.solve([], { conflicts: left(), keepGoing: effort.keepGoing });
    if (verdict === "unknown") return answer(best === null ? "unknown" : "found");
    if (verdict === "no") return best === null ? none : answer("proved");
    best = starts.map(solver.value);
    effort.tell(best[sink] as number, solver.least(end));
    solver.clause([solver.negate(solver.atLeast(end, best[sink] as number))]);
  }
};
