import { type Minutes, minutes } from "../measure/units.ts";
import type { Cause, Placed, Plan } from "../model/plan.ts";
import type { Prep, TaskId } from "../model/prep.ts";

/** A task, and what pins it where it stands. */
export type Link = { readonly task: TaskId; readonly cause: Cause };

/** The tightest chain of a course: without any of its links the first task of it could stand later. */
export type CourseChain = {
  readonly course: number;
  /** From the first task to the landing; of a late course from the landing back to what it waited for. */
  readonly links: readonly Link[];
  /** Minutes for which the cook of its first attended task is free right before it: what comes before may overrun by so much. Null without a cook. */
  readonly slackMinutes: Minutes | null;
};

/** Which kind of cause is followed first: what is nearest to the food, then the course, then hands, hours, and the rest. */
const order: readonly Cause["kind"][] = [
  "due",
  "lag",
  "oven",
  "resource",
  "cook",
  "shift",
  "open",
  "fixed",
  "calm",
  "level",
  "spread",
  "slack",
];

/**
 * What pins a task, link by link, until a course, an hour or a choice: each task stands where it does because of the
 * next. A chain that reaches a course is taken before one that does not. Tasks that hold each other end it where the
 * chain comes round. Empty for a task without a place.
 */
export const chainOf = (plan: Plan, task: TaskId): readonly Link[] => walk(placesOf(plan), task, false);

const placesOf = (plan: Plan): ReadonlyMap<TaskId, Placed> => new Map(plan.placed.map((p) => [p.task, p]));

const walk = (places: ReadonlyMap<TaskId, Placed>, from: TaskId, earlier: boolean): readonly Link[] => {
  const seen = new Set<TaskId>();
  let first: readonly Link[] | null = null;
  let round: readonly Link[] | null = null;
  const follow = (task: TaskId, links: readonly Link[]): readonly Link[] | null => {
    seen.add(task);
    const causes = (places.get(task)?.because ?? [])
      .filter((cause) => ("earlier" in cause && cause.earlier === true) === earlier)
      .toSorted((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
    for (const cause of causes) {
      const next = [...links, { task, cause }];
      if (!("task" in cause)) {
        first ??= next;
        if (cause.kind === "due" || (earlier && cause.kind !== "fixed")) return next;
        continue;
      }
      if (seen.has(cause.task) || !places.has(cause.task)) {
        if (links.some((link) => link.task === cause.task)) round ??= next;
        continue;
      }
      const found = follow(cause.task, next);
      if (found) return found;
    }
    return null;
  };
  return follow(from, []) ?? first ?? round ?? [];
};

/** The tightest chain of each course that lands whole. */
export const courseChains = (prep: Prep, plan: Plan): readonly CourseChain[] => {
  const places = placesOf(plan);
  return plan.courses.flatMap((landing): CourseChain[] => {
    const goal = prep.courses.find((g) => g.course === landing.course);
    if (!landing.whole || !goal) return [];
    const plates = goal.plateTasks.flatMap((id) => places.get(id) ?? []);
    const last = plates.find((plate) => plate.end === landing.lands);
    if (!last) return [];
    const late = landing.lateMinutes > 0;
    const links = late ? walk(places, last.task, true) : longest(prep, plan, places, landing.course);
    const tasks = late ? links.toReversed() : links;
    const begins = tasks.flatMap(({ task }) => places.get(task) ?? []).find((p) => p.cook !== null);
    return [
      {
        course: landing.course,
        links,
        slackMinutes: begins ? minutes(freeBefore(prep, plan, begins)) : null,
      },
    ];
  });
};

/** Of the course's tasks that are pinned all the way to its landing, the chain of the one that begins first. */
const longest = (
  prep: Prep,
  plan: Plan,
  places: ReadonlyMap<TaskId, Placed>,
  course: number,
): readonly Link[] => {
  const own = new Set(prep.tasks.filter((task) => task.course === course).map((task) => task.id));
  for (const { task } of plan.placed) {
    if (!own.has(task)) continue;
    const links = walk(places, task, false);
    const end = links.at(-1)?.cause;
    if (end?.kind === "due" && end.course === course) return links;
  }
  return [];
};

/** Minutes before a task in which its cook has nothing else to attend to, back to the beginning of the shift. */
const freeBefore = (prep: Prep, plan: Plan, begins: Placed): number => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const shift = prep.crew
    .find((member) => member.name === begins.cook)
    ?.shifts.find((s) => s.from <= begins.start && begins.start < s.to);
  let from = shift?.from ?? begins.start;
  for (const other of plan.placed) {
    if (other.cook !== begins.cook || other.task === begins.task) continue;
    tasks.get(other.task)?.segments.forEach((segment, i) => {
      const at = other.segments[i];
      if (segment.attention === "none" || at === undefined || at >= begins.start) return;
      const to = at + Math.max(0, Math.ceil(segment.minutes.likely));
      if (to > from) from = Math.min(to, begins.start) as typeof from;
    });
  }
  return Math.max(0, begins.start - from);
};
