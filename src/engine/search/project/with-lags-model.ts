import { learningSolver } from "../learn/learning-solver.ts";
import type { LearningSolver, Unknown } from "../learn/solver.ts";
import type { Project } from "./project.ts";
import { enoughTime, waysOf } from "./with-lags-paths.ts";

/** A project posted to a learning solver: the start of each activity, the last of them the end of all. */
export type LagModel = {
  readonly solver: LearningSolver;
  readonly starts: readonly Unknown[];
  readonly end: Unknown;
};

/** Null when lags that go round, or a demand above its capacity, already exclude every schedule. */
export const lagModel = (project: Project, seed: number): LagModel | null => {
  const { lengths, demands, capacities, lags } = project;
  const ways = waysOf(project);
  if (ways === null || demands.some((row) => row.some((d, r) => d > (capacities[r] ?? 0)))) return null;
  const { count, far } = ways;
  const sink = count - 1;
  const tailOf = (i: number): number => far[i * count + sink] as number;
  const horizon = Math.max(enoughTime(project), tailOf(0));
  const solver = learningSolver(seed);
  const starts = lengths.map((_, i) => solver.integer(far[i] as number, horizon - tailOf(i)));
  const start = (i: number): Unknown => starts[i] as Unknown;
  const end = start(sink);
  lengths.forEach((length, i) => {
    if (i !== sink && tailOf(i) === length) solver.difference(start(i), end, length, null);
  });
  for (const { from, to, weight } of lags) solver.difference(start(from), start(to), weight, null);
  capacities.forEach((capacity, r) => {
    const uses = lengths.flatMap((length, i) => {
      const amount = demands[i]?.[r] ?? 0;
      return length > 0 && amount > 0 ? [{ start: start(i), offset: 0, length, amount, present: null }] : [];
    });
    if (uses.reduce((sum, use) => sum + use.amount, 0) > capacity) solver.cumulative(uses, capacity, null);
  });
  return { solver, starts, end };
};
