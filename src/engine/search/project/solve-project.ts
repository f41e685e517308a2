import { chanceFrom } from "../chance.ts";
import { builderFor } from "./build-schedule.ts";
import { criticalPath } from "./critical-path.ts";
import { isPlain, type Layout, layOut } from "./layout.ts";
import { populationOf } from "./population.ts";
import type { Project, ProjectAnswer, ProjectEffort } from "./project.ts";
import { solveWithLags } from "./with-lags.ts";
import { lagSearch } from "./with-lags-search.ts";

/** Schedules bred before the first proof is tried, and between two looks at whether to go on. */
const firstBreeding = 6000;
const slice = 400;
/** Conflicts that the first proof may take; each further one gets so many times more, and breeding in between too. */
const firstProof = 400;
const longer = 3;

/**
 * Schedules a project as short as it can, for as long as it may (Kelley 1963). Plain projects are bred as activity lists
 * and proved, or bettered, by the learning solver in turns; projects with greatest lags go to that solver alone.
 * `steps` counts schedules or conflicts.
 */
export const solveProject = (project: Project, effort: ProjectEffort): ProjectAnswer => {
  const layout = isPlain(project) ? layOut(project) : null;
  if (layout === null || isTooDemanding(project)) return solveWithLags(project, effort);
  const search = lagSearch(project, effort.seed);
  if (search === null) return solveWithLags(project, effort);
  const path = criticalPath(layout);
  const builder = builderFor(layout);
  const population = populationOf(layout, path, builder, chanceFrom(effort.seed));
  const sink = project.lengths.length - 1;
  let bound = Math.max(path.length, energyBound(layout)) * layout.period;
  let best: readonly number[] | null = null;
  let makespan = Number.POSITIVE_INFINITY;
  let steps = 0;
  let stopped = false;
  const keepGoing = (): boolean => {
    if (!stopped && ((effort.steps !== null && steps >= effort.steps) || !effort.keepGoing())) stopped = true;
    return !stopped;
  };
  const take = (starts: readonly number[]): void => {
    best = starts;
    makespan = starts[sink] ?? 0;
    effort.tell(makespan, bound);
  };
  const found = (starts: Int32Array, span: number): boolean => {
    if (span * layout.period < makespan) take(inFileOrder(layout, starts, span));
    return makespan > bound;
  };
  let breeding = firstBreeding;
  let proof = firstProof;
  for (;;) {
    for (let bred = 0; bred < breeding && makespan > bound && keepGoing(); bred += slice) {
      population.breed(slice, found);
      steps += slice;
    }
    if (makespan <= bound || !keepGoing()) break;
    search.offer({ starts: best, bound });
    const answer = search.run({ steps: proof, keepGoing, tell: () => {} });
    steps += proof;
    bound = Math.max(bound, answer.bound);
    if (answer.starts !== null && answer.makespan !== null && answer.makespan < makespan) take(answer.starts);
    else effort.tell(makespan, bound);
    if (answer.status === "proved") bound = makespan;
    proof *= longer;
    breeding *= longer;
  }
  return {
    status: makespan <= bound ? "proved" : best === null ? "unknown" : "found",
    makespan: best === null ? null : makespan,
    bound,
    starts: best,
  };
};

/** True when an activity asks for more than there is: then there is no schedule, and the solver says so. */
const isTooDemanding = ({ demands, capacities }: Project): boolean =>
  demands.some((row) => row.some((amount, r) => amount > (capacities[r] ?? 0)));

/** No resource can do its work in less: work over capacity, rounded up. */
const energyBound = ({ count, resources, capacities, demands, lengths }: Layout): number => {
  let most = 0;
  for (let r = 0; r < resources; r++) {
    let work = 0;
    for (let a = 0; a < count; a++) work += (demands[a * resources + r] as number) * (lengths[a] as number);
    most = Math.max(most, Math.ceil(work / Math.max(1, capacities[r] as number)));
  }
  return most;
};

/** Starts by the activities of the project, the sink at the makespan. */
const inFileOrder = ({ count, activity, period }: Layout, starts: Int32Array, span: number): number[] => {
  const own = new Array<number>(count).fill(0);
  for (let i = 0; i < count; i++) own[activity[i] as number] = (starts[i] as number) * period;
  own[count - 1] = span * period;
  return own;
};
