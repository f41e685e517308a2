import type { Plan, Violation } from "../model/plan.ts";
import { type GoalLevel, goalLevels, type Prep } from "../model/prep.ts";
import type { Laid } from "./lay-out.ts";
import { violation } from "./violation.ts";

/** Course times further apart than this belong to two services. */
const serviceGap = 180;
/** The hour before a service. */
const quiet = 60;

/** What the plan says of each level is so. A plan with tasks left out may say anything, one that states no level says nothing. */
export const brokenValues = (prep: Prep, plan: Plan, laid: readonly Laid[]): readonly Violation[] => {
  const levels = prep.levels ?? goalLevels;
  const stated = plan.objective.levels;
  if (plan.unplaced.length > 0 || stated.length === 0) return [];
  const wrong = (detail: string): Violation => violation("wrong-value", [], 0, detail);
  if (stated.map((l) => l.level).join() !== levels.join()) return [wrong("levels are not those asked for")];
  return stated.flatMap(({ level, value, bound, proved }) => {
    const found = foundOf(level, prep, plan, laid);
    if (found !== null && Math.abs(found - value) > 1e-6)
      return [wrong(`${level} ${found}, stated ${value}`)];
    if (bound > value) return [wrong(`${level} ${value} below its bound ${bound}`)];
    return proved && bound !== value ? [wrong(`${level} proved at ${bound}, has ${value}`)] : [];
  });
};

/** Null where the problem leaves the quiet hours to the planner and has no course to tell them by. */
const foundOf = (level: GoalLevel, prep: Prep, plan: Plan, laid: readonly Laid[]): number | null => {
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  switch (level) {
    case "late":
      return plan.courses.reduce((sum, course) => sum + course.lateMinutes, 0);
    case "hold":
    case "freshness":
      return prep.holds
        .filter((h) => h.hot === (level === "hold"))
        .reduce((sum, h) => {
          const task = placed.get(h.task);
          const plate = placed.get(h.plate);
          return task && plate ? sum + h.weight * Math.max(0, plate.start - task.end) : sum;
        }, 0);
    case "free-from":
      return (prep.freeFrom ?? []).filter((pair) => {
        const before = placed.get(pair.before);
        const after = placed.get(pair.after);
        return before && after && before.end > after.start;
      }).length;
    case "calm":
      return handsIn(laid, prep.calm ?? services(prep).map((s) => ({ from: s.first - quiet, to: s.first })));
    case "service":
      return prep.calm
        ? null
        : handsIn(
            laid,
            services(prep).map((s) => ({ from: s.first, to: s.last })),
          );
  }
};

/** Hands-on minutes of what is not finishing, inside some hours. */
const handsIn = (laid: readonly Laid[], hours: readonly { from: number; to: number }[]): number => {
  let sum = 0;
  for (const l of laid) {
    if (l.task.finishing || l.segment.attention !== "hands") continue;
    for (const hour of hours) sum += Math.max(0, Math.min(l.to, hour.to) - Math.max(l.from, hour.from));
  }
  return sum;
};

/** The first and last due time of each service. */
const services = (prep: Prep): readonly { readonly first: number; readonly last: number }[] => {
  const due = prep.courses.map((goal) => Math.ceil(goal.due)).sort((a, b) => a - b);
  const found: { first: number; last: number }[] = [];
  for (const at of due) {
    const last = found.at(-1);
    if (last && at - last.last <= serviceGap) last.last = at;
    else found.push({ first: at, last: at });
  }
  return found;
};
