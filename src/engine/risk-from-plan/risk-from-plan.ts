import { count, minutes, share } from "../measure/units.ts";
import type { CourseLanding, Plan } from "../model/plan.ts";
import type { CourseGoal, Prep, TaskId } from "../model/prep.ts";
import type { CourseRisk, Risk, WatchedTask } from "../model/risk.ts";
import { type Network, networkOf } from "../sequence/network.ts";
import { drawLengths, emptyNight, eveningsOf, type Night, runNight } from "../sequence/night.ts";

/** How many nights are run, and from which seed; the same seed gives the same nights for every plan. */
export type RiskEffort = { readonly runs: number; readonly seed: number };

/** Later than this a course counts as late; guests do not notice less. Common practice, no source. */
const grace = 5;

const mostWatched = 5;

/**
 * How likely each course is to land in time, by running the plan many times with lengths of work drawn by chance:
 * ranges from the words, else spreads of `spread.ts`, and a pace for each cook and night. Courses that the plan does not
 * land whole are left out. `sooner` is the same plan with its work begun so many minutes sooner, to tell what that buys.
 * The figures stand or fall with those spreads; they are for comparing plans.
 */
export const riskFromPlan = (
  prep: Prep,
  plan: Plan,
  { runs, seed }: RiskEffort,
  sooner: { readonly minutes: number; readonly plan: Plan } = { minutes: 0, plan },
): Risk => {
  const nights = Math.max(1, Math.min(100_000, Math.floor(runs)));
  const asPlanned = runNights(prep, plan, nights, seed);
  return {
    runs: count(nights),
    courses: asPlanned.courses,
    watch: asPlanned.watch,
    spare: {
      minutes: minutes(sooner.minutes),
      courses: sooner.plan === plan ? asPlanned.courses : runNights(prep, sooner.plan, nights, seed).courses,
    },
  };
};

type Landing = {
  readonly goal: CourseGoal;
  readonly landing: CourseLanding;
  readonly plates: readonly number[];
};

const stagesOf = (goal: CourseGoal, { span }: Network): { readonly plates: readonly number[] } => ({
  plates: goal.plateTasks.flatMap((id) => span.get(id)?.last ?? []),
});

const runNights = (
  prep: Prep,
  plan: Plan,
  runs: number,
  seed: number,
): { readonly courses: readonly CourseRisk[]; readonly watch: readonly WatchedTask[] } => {
  const network = networkOf(prep, plan);
  const goals = prep.courses.flatMap((goal): Landing[] => {
    const landing = plan.courses.find((c) => c.course === goal.course && c.due === goal.due);
    return landing === undefined || !landing.whole ? [] : [{ goal, landing, ...stagesOf(goal, network) }];
  });
  const { stages } = network;
  const cooks = prep.crew.map((cook) => cook.name);
  const night = emptyNight(stages.length);
  const evenings = eveningsOf(prep, network);
  // Only the first stage of a task has an hour of its own; the others follow on.
  const soonest = Float64Array.from(stages, ({ planned, place }, k) =>
    place === 0 ? planned - (network.ahead[k] ?? 0) : Number.NEGATIVE_INFINITY,
  );
  const late = goals.map(() => new Float64Array(runs));
  const brings = new Map<TaskId, number>();
  const onChain = new Map<TaskId, number>();
  for (let run = 0; run < runs; run += 1) {
    drawLengths(network, cooks, seed, run, night.length);
    runNight(evenings, soonest, night);
    const seen = new Set<TaskId>();
    for (const [g, { goal, plates: ends }] of goals.entries()) {
      let last = -1;
      let lands = Number.NEGATIVE_INFINITY;
      for (const k of ends) {
        const end = (night.start[k] ?? 0) + (night.length[k] ?? 0);
        if (end > lands) {
          lands = end;
          last = k;
        }
      }
      const minutesLate = Math.max(0, lands - goal.due);
      const own = late[g];
      if (own !== undefined) own[run] = minutesLate;
      if (minutesLate > 0) blame(network, night, last, minutesLate, runs, brings, onChain, seen);
    }
  }
  return {
    courses: goals.map(({ goal }, g) => courseRisk(goal, late[g] ?? new Float64Array(0))),
    watch: [...brings]
      .filter(([, by]) => by > 0)
      .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
      .slice(0, mostWatched)
      .map(([task, by]) => ({
        task,
        brings: minutes(by),
        share: share((onChain.get(task) ?? 0) / runs),
      })),
  };
};

/**
 * Walks back along what held up a late plate, and puts the lateness down to the stages of that chain by how far each
 * ran over its planned length.
 */
const blame = (
  { stages }: Network,
  { length, heldBy }: Night,
  plate: number,
  minutesLate: number,
  runs: number,
  brings: Map<TaskId, number>,
  onChain: Map<TaskId, number>,
  seen: Set<TaskId>,
): void => {
  const over: (readonly [TaskId, number])[] = [];
  let total = 0;
  for (let k = plate, steps = 0; k >= 0 && steps < stages.length; k = heldBy[k] ?? -1, steps += 1) {
    const stage = stages[k];
    if (stage === undefined) break;
    const by = (length[k] ?? 0) - (stage.plannedEnd - stage.planned);
    if (by <= 0) continue;
    over.push([stage.task.id, by]);
    total += by;
  }
  for (const [task, by] of over) {
    brings.set(task, (brings.get(task) ?? 0) + (minutesLate * by) / total / runs);
    if (seen.has(task)) continue;
    seen.add(task);
    onChain.set(task, (onChain.get(task) ?? 0) + 1);
  }
};

const courseRisk = (goal: CourseGoal, late: Float64Array): CourseRisk => {
  const sorted = late.slice().sort();
  const within = sorted.filter((m) => m <= grace).length;
  const sum = sorted.reduce((total, m) => total + m, 0);
  const runs = Math.max(1, sorted.length);
  return {
    course: goal.course,
    name: goal.name,
    due: goal.due,
    withinFive: share(within / runs),
    expectedLate: minutes(sum / runs),
    nineInTen: minutes(sorted[Math.min(sorted.length - 1, Math.ceil(0.9 * sorted.length) - 1)] ?? 0),
  };
};
