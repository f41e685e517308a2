import { minutes, moment } from "../measure/units.ts";
import type { Load } from "../model/load.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";

/** Adds up the hands-on work of a plan and finds its busiest hour. Minded and unattended minutes do not count. */
export const loadFromPlan = (prep: Prep, plan: Plan): Load => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const stretches = plan.placed.flatMap((placed) =>
    (tasks.get(placed.task)?.segments ?? []).flatMap((segment, k) => {
      const from = placed.segments[k];
      const to = placed.segments[k + 1] ?? placed.end;
      return segment.attention === "hands" && from !== undefined ? [{ from, to }] : [];
    }),
  );
  const inHour = (from: number): number =>
    stretches.reduce((sum, s) => sum + Math.max(0, Math.min(s.to, from + 60) - Math.max(s.from, from)), 0);
  // The sum is piecewise linear: its greatest value stands where some stretch begins or ends with the hour.
  const candidates = [...new Set(stretches.flatMap(({ from, to }) => [from, to - 60]))].sort((a, b) => a - b);
  let best: { from: number; handsMinutes: number } | null = null;
  for (const from of candidates) {
    const sum = inHour(from);
    if (best === null || sum > best.handsMinutes + 1e-9) best = { from, handsMinutes: sum };
  }
  return {
    handsMinutes: minutes(stretches.reduce((sum, { from, to }) => sum + to - from, 0)),
    busiest: best === null ? null : { from: moment(best.from), handsMinutes: minutes(best.handsMinutes) },
  };
};
