import { moment } from "../../measure/units.ts";
import type { Clash, Easing, WayOut } from "../../model/clash.ts";
import type { Plan } from "../../model/plan.ts";
import type { Prep } from "../../model/prep.ts";
import { mostSlip } from "../build.ts";
import { longestPaths } from "../longest-paths.ts";
import type { Model } from "../model.ts";
import { courseChange, ovenChangeOf, resourceChange, type Sized, shiftChanges } from "./clash-changes.ts";
import { demandOf } from "./clash-demands.ts";
import { type Found, findClash } from "./clash-find.ts";
import { type Asking, modelsOf } from "./clash-models.ts";
import type { Purse } from "./clash-oracle.ts";
import { type Replan, type Search, tryOut, waysForAll, waysOf } from "./clash-ways.ts";

/** Clashes looked for in one plan; more would not be read. */
const mostClashes = 3;
/** Ways out that are kept. */
const mostWays = 8;

/** What stands in the way of a plan, and what would help. */
export type Trouble = { readonly clashes: readonly Clash[]; readonly waysOut: readonly WayOut[] };

/**
 * For a plan that is not whole or not on time: smallest demands that clash, proved, and the least changes that free
 * them, each tried on all of the work.
 */
export const troubleOf = (
  prep: Prep,
  plan: Plan,
  replan: Replan,
  purse: { readonly find: Purse; readonly free: Purse },
): Trouble => {
  if (plan.status === "on-time") return { clashes: [], waysOut: [] };
  const asking = modelsOf(prep);
  const [model] = asking.models;
  if (model === undefined) return { clashes: [], waysOut: [] };
  const seen: Seen[] =
    plan.unplaced.length > 0
      ? cannot(prep, model, asking, plan, purse.find)
      : late(prep, model, asking, plan, purse.find);
  if (prep.tasks.some((task) => (task.ways ?? []).length > 0)) {
    // What would free it is not looked for where each change would have to be tried in every way.
    const clashes = seen.map(({ found, lateCourse, mostLate }): Clash => {
      const demands = found.groups.map((group) => demandOf(prep, model, mostLate, group));
      const tasks = found.tasks.map((n) => prep.tasks[n]?.id ?? "");
      return { lateCourse, demands, tasks, smallest: found.sure, leastChange: demands.map(() => null) };
    });
    return { clashes, waysOut: [] };
  }
  const lateAnyway = Math.min(
    plan.objective.lateMinutes,
    plan.unplaced.length > 0 ? Number.POSITIVE_INFINITY : replan(prep, plan.placed).objective.lateMinutes,
  );
  const clashes: Clash[] = [];
  const ways: WayOut[] = [];
  const all = prep.tasks.map((task) => task.id);
  seen.forEach(({ found, lateCourse, mostLate }, c) => {
    const own = found.tasks.map((n) => prep.tasks[n]?.id ?? "");
    const others = new Set(
      seen.flatMap((s, i) =>
        i === c || s.lateCourse !== null ? [] : s.found.tasks.map((n) => prep.tasks[n]?.id ?? ""),
      ),
    );
    const lateOf = (course: number): number | null =>
      mostLate[model.goals.findIndex((goal) => goal.course === course)] ?? null;
    const search: Search = {
      prep,
      plan,
      purse: purse.free,
      part: { tasks: new Set(own), mostLate: lateOf, anchored: false },
      whole: {
        tasks: others.size === 0 ? null : new Set(all.filter((id) => own.includes(id) || !others.has(id))),
        mostLate: lateOf,
        anchored: true,
      },
      known: new Map(),
      lateAnyway,
      replan,
      solved: (after) =>
        !after.unplaced.some((id) => own.includes(id) || !others.has(id)) &&
        after.courses.every((course) => course.lateMinutes <= (lateOf(course.course) ?? mostSlip)),
    };
    const demands = found.groups.map((group) => demandOf(prep, model, mostLate, group));
    const { leastChange, ways: own2 } = waysOf(search, demands, c);
    clashes.push({ lateCourse, demands, tasks: own, smallest: found.sure, leastChange });
    ways.push(...own2);
  });
  if (seen.length > 1 && plan.unplaced.length > 0) {
    const question = { tasks: null, mostLate: () => mostSlip, anchored: true };
    const solved = (after: Plan): boolean => after.unplaced.length === 0;
    const rest = { ...purse.free, left: Math.max(purse.free.left, purse.find.left) };
    const shared = { prep, plan, purse: rest, part: question, whole: question, replan, solved };
    ways.push(...waysForAll({ ...shared, known: new Map(), lateAnyway }));
  }
  if (ways.length === 0 && purse.free.keepGoing())
    ways.push(...usual(prep, plan, replan, purse.free, lateAnyway));
  return { clashes, waysOut: onceEach([...ways].sort(byHelp)).slice(0, mostWays) };
};

type Seen = {
  readonly found: Found;
  readonly lateCourse: number | null;
  readonly mostLate: readonly (number | null)[];
};

/**
 * Clashes that leave tasks without a place, one after the other, apart from each other: first those that no lateness
 * would cure, then those that the most lateness that is planned does not.
 */
const cannot = (prep: Prep, model: Model, { models, open }: Asking, plan: Plan, purse: Purse): Seen[] => {
  const seen: Seen[] = [];
  const gone = new Set<number>();
  const widths = scopesIn(model);
  const nodes = plan.unplaced
    .map((id) => prep.tasks.findIndex((task) => task.id === id))
    .filter((node) => node >= 0)
    .map((node) => ({ node, scopes: widths(node) }));
  const find = (tasks: ReadonlySet<number>, most: number | null): Seen | null => {
    const mostLate = model.goals.map(() => most);
    const left = new Set([...tasks].filter((n) => !gone.has(n) && !open.has(n)));
    const found = findClash(prep, models, { tasks: left, mostLate }, purse);
    return found && { found, lateCourse: null, mostLate };
  };
  // Little work is asked about first, around each task: most often that is enough, and it costs little.
  for (const most of [null, mostSlip]) {
    for (let width = 0; width < mostScopes; width++) {
      for (const { node, scopes } of nodes) {
        const tasks = scopes[width];
        if (seen.length >= mostClashes) return seen;
        const one = tasks === undefined || gone.has(node) ? null : find(tasks, most);
        if (one === null) continue;
        seen.push(one);
        for (const n of one.found.tasks) gone.add(n);
      }
    }
  }
  return seen;
};

/**
 * Why not every course can be on time; where that was not proved, for each late course why it cannot be while the others
 * land as they do.
 */
const late = (prep: Prep, model: Model, { models, open }: Asking, plan: Plan, purse: Purse): Seen[] => {
  const lateness = model.goals.map(
    (goal) => plan.courses.find((course) => course.course === goal.course)?.lateMinutes ?? 0,
  );
  const goals = model.goals.map((_, g) => g).filter((g) => (lateness[g] ?? 0) > 0);
  const seenWith = (g: number, mostLate: readonly number[]): Seen | null => {
    const node = model.nodes.findIndex((n, i) => i < model.taskCount && n.course === g);
    for (const tasks of node < 0 ? [] : scopesIn(model)(node)) {
      for (const n of open) tasks.delete(n);
      const found = findClash(prep, models, { tasks, mostLate }, purse);
      if (!found) continue;
      const named = found.groups.flatMap((group) => (group.kind === "due" && group.most ? [group.goal] : []));
      const at = goals.find((l) => named.includes(l)) ?? g;
      return { found, lateCourse: model.goals[at]?.course ?? null, mostLate };
    }
    return null;
  };
  const [first] = goals;
  if (first === undefined) return [];
  const all = seenWith(
    first,
    model.goals.map(() => 0),
  );
  if (all) return [all];
  return goals
    .flatMap(
      (g) =>
        seenWith(
          g,
          lateness.map((minutes, i) => (i === g ? 0 : minutes)),
        ) ?? [],
    )
    .slice(0, mostClashes);
};

/** Parts of the work around a task, each wider than the one before: what lags tie to it, its course, its day, all. */
const scopesIn = (model: Model): ((node: number) => readonly Set<number>[]) => {
  const all = Array.from({ length: model.taskCount }, (_, n) => n);
  const paths = longestPaths(
    model.nodes.length,
    model.arcs.filter((arc) => arc.lag >= 0),
  );
  return (node) => {
    const course = model.nodes[node]?.course ?? 0;
    const kin = paths.kin(node).filter((n) => n < model.taskCount);
    const own = all.filter((n) => model.nodes[n]?.course === course);
    const before = all.filter((n) => (model.nodes[n]?.course ?? 0) <= course);
    const wider = [kin, [...new Set([...kin, ...own])], before, all];
    return wider
      .filter((list, i) => i === 0 || list.length > (wider[i - 1]?.length ?? 0))
      .map((list) => new Set(list));
  };
};

const mostScopes = 4;

/** What cooks try when nothing is proved: a burner, an oven, a helper, an earlier start, a later course; what helps is kept. */
const usual = (
  prep: Prep,
  plan: Plan,
  replan: Replan,
  purse: Purse,
  lateAnyway: number,
): readonly WayOut[] => {
  const question = { tasks: null, mostLate: () => null, anchored: true };
  const search: Search = {
    prep,
    plan,
    purse,
    part: question,
    whole: question,
    replan,
    solved: () => false,
    known: new Map(),
    lateAnyway,
  };
  const late = plan.courses.filter((course) => course.lateMinutes > 0);
  const used = new Set([
    ...prep.tasks.flatMap((t) => t.segments.flatMap((s) => s.uses.map((u) => u.resource))),
    ...(prep.stays ?? []).map((stay) => stay.resource),
  ]);
  const sized: Sized[] = [
    ...late.map((course) => courseChange(course.course, course.lateMinutes)),
    ...prep.crew.flatMap((member) => shiftChanges(prep, member.name)),
    ...prep.courses.slice(-1).map((goal) => ({ most: 1, at: () => helper(goal.due) })),
    ...prep.resources
      .filter((r) => used.has(r.id) && Number.isInteger(r.capacity) && r.capacity < 10)
      .map((r) => ({ ...resourceChange(r.id, 1), most: 1 })),
    ...(prep.ovens.some((o) => used.has(o.id)) || used.has("oven") ? [ovenChangeOf(prep)] : []),
  ];
  return sized.slice(0, mostUsual).flatMap((s) => {
    const change: Easing = s.at(s.most);
    return tryOut(search, { size: s.most, change, sure: false }, null) ?? [];
  });
};

/** A helper for the last hours of a sitting. */
const helper = (due: number): Easing => ({
  kind: "hands",
  from: moment(due - 180),
  to: moment(due),
});

/** Usual changes that are tried. */
const mostUsual = 12;

const kinds: readonly Easing["kind"][] = [
  "lag",
  "course",
  "shift",
  "day-before",
  "hands",
  "resource",
  "oven",
];

/** The same change may free one clash and all of them; it is told once, where it helps most. */
const onceEach = (ways: readonly WayOut[]): readonly WayOut[] => {
  const seen = new Set<string>();
  return ways.filter(({ change }) => {
    const key = JSON.stringify(change);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
};

const byHelp = (a: WayOut, b: WayOut): number =>
  a.after.unplaced - b.after.unplaced ||
  a.after.lateMinutes - b.after.lateMinutes ||
  kinds.indexOf(a.change.kind) - kinds.indexOf(b.change.kind);
