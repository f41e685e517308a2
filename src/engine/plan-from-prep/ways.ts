import type { Finding } from "../findings/finding.ts";
import type { Outcome } from "../model/outcome.ts";
import type { LevelValue, Plan } from "../model/plan.ts";
import type { Prep, Task } from "../model/prep.ts";
import type { PlanEffort } from "./plan-effort.ts";
import { withoutTasks } from "./without-tasks.ts";

type Planner = (prep: Prep, effort: PlanEffort) => Outcome<Plan, Finding>;
/** The way of each task that has several, by its place among them. */
type Ways = readonly number[];

/** What one trial of some ways may take at most: tries for each task, and conflicts. */
const trial = { tries: 4, conflicts: 20_000 };
/** Parts of the tree of choices that are looked at, at most. */
const mostParts = 500;
/** Rounds in which each task's ways are tried one after the other. */
const rounds = 2;

/**
 * Places every task, and chooses a way for those that have several. First each is tried in turn for a good plan; then the
 * tree of all choices is gone through: what is not chosen yet is left out of the work, and so the bound of the rest is one for
 * every plan that agrees with the choices made (Land, Doig 1960). What the tree does not close is not called proved.
 */
export const planWithWays = (prep: Prep, effort: PlanEffort, plan: Planner): Outcome<Plan, Finding> => {
  const several = prep.tasks.flatMap((task, t) => ((task.ways ?? []).length > 0 ? [t] : []));
  const keepGoing = effort.keepGoing ?? (() => true);
  const short: PlanEffort = {
    ...effort,
    tries: Math.min(effort.tries, trial.tries * prep.tasks.length),
    ...(effort.proof === undefined ? {} : { proof: Math.min(effort.proof, trial.conflicts) }),
    tell: () => {},
  };
  const choices = (t: number): number => 1 + (prep.tasks[t]?.ways ?? []).length;
  let ways: Ways = several.map(() => 0);
  let best = plan(doneBy(prep, several, ways), short);
  const tell = (): void =>
    effort.tell?.({ unplaced: best.value.unplaced.length, levels: best.value.objective.levels });
  const offer = (tried: Ways, found: Outcome<Plan, Finding>): boolean => {
    if (comparePlans(found.value, best.value) >= 0) return false;
    best = found;
    ways = tried;
    tell();
    return true;
  };
  tell();
  for (let round = 0; round < rounds; round++) {
    let gained = false;
    for (const [i, t] of several.entries()) {
      for (let way = 0; way < choices(t) && keepGoing(); way++) {
        if (way === ways[i]) continue;
        const tried = ways.map((w, k) => (k === i ? way : w));
        if (offer(tried, plan(doneBy(prep, several, tried), short))) gained = true;
      }
    }
    if (!gained) break;
  }

  let parts = 0;
  let root: readonly LevelValue[] = [];
  /** True when no plan that agrees with these choices is better than the best. */
  const closed = (chosen: Ways): boolean => {
    if (parts++ >= mostParts || !keepGoing()) return false;
    const open = several.slice(chosen.length);
    const found = plan(doneBy(withoutTasks(prep, open), several, chosen), short);
    if (open.length === 0) offer(chosen, found);
    if (found.value.impossible === true) return true;
    if (found.value.unplaced.length > 0) return open.length > 0 && branch(chosen);
    const { levels } = found.value.objective;
    if (chosen.length === 0) root = levels;
    if (best.value.unplaced.length === 0 && isNoBetter(levels, best.value.objective.levels)) return true;
    return open.length > 0 && branch(chosen);
  };
  const branch = (chosen: Ways): boolean => {
    const i = chosen.length;
    const first = ways[i] ?? 0;
    const rest = Array.from({ length: choices(several[i] ?? 0) }, (_, way) => way).filter(
      (way) => way !== first,
    );
    let all = true;
    for (const way of [first, ...rest]) all = closed([...chosen, way]) && all;
    return all;
  };
  const proved = effort.proof !== undefined && closed([]);
  if (!proved && keepGoing()) offer(ways, plan(doneBy(prep, several, ways), { ...effort, tell: () => {} }));

  const { value, findings } = best;
  const wayOf = new Map(several.map((t, i) => [prep.tasks[t]?.id ?? "", ways[i] ?? 0]));
  const { impossible: _, ...kept } = value;
  return {
    value: {
      ...kept,
      ...(proved && value.unplaced.length > 0 ? { impossible: true } : {}),
      placed: value.placed.map((placed) => {
        const way = wayOf.get(placed.task) ?? 0;
        return way === 0 ? placed : { ...placed, way };
      }),
      objective: {
        ...value.objective,
        levels: boundedBy(value, proved, root),
      },
    },
    findings,
  };
};

/** The prep with the first tasks of several ways done in the ways chosen. */
const doneBy = (prep: Prep, several: readonly number[], ways: Ways): Prep => {
  const chosen = new Map(ways.map((way, i) => [several[i] ?? -1, way]));
  const names = new Map([...chosen].map(([t, way]) => [prep.tasks[t]?.id ?? "", way]));
  return {
    ...prep,
    tasks: prep.tasks.map((task): Task => {
      const way = names.get(task.id) ?? 0;
      return way === 0 ? task : { ...task, segments: task.ways?.[way - 1] ?? task.segments };
    }),
  };
};

/** Negative when the first is better: more of it is placed, or the first level that differs is less. */
const comparePlans = (a: Plan, b: Plan): number => {
  if (a.unplaced.length !== b.unplaced.length) return a.unplaced.length - b.unplaced.length;
  for (const [l, level] of a.objective.levels.entries()) {
    const difference = level.value - (b.objective.levels[l]?.value ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};

/** True when no plan with these bounds is better than one with these values. */
const isNoBetter = (bounds: readonly LevelValue[], best: readonly LevelValue[]): boolean => {
  for (const [l, { bound }] of bounds.entries()) {
    const value = best[l]?.value ?? 0;
    if (bound !== value) return bound > value;
  }
  return true;
};

/** The levels of a plan with what is known of all ways: all of it when the tree was closed, else what holds at its root. */
const boundedBy = (plan: Plan, proved: boolean, root: readonly LevelValue[]): readonly LevelValue[] => {
  let sure = plan.unplaced.length === 0;
  return plan.objective.levels.map((level, l) => {
    if (proved && sure) return { ...level, bound: level.value, proved: true };
    const bound = sure ? Math.min(level.value, root[l]?.bound ?? 0) : 0;
    sure = sure && bound === level.value;
    return { ...level, bound, proved: sure };
  });
};
