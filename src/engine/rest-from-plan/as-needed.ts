import { minutes, moment } from "../measure/units.ts";
import type { Placed } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import type { Overtime, Rest } from "../model/rest.ts";
import { lengthOf } from "./taken.ts";

const heat: ReadonlySet<string> = new Set(["burner", "oven", "grill", "fryer"]);

/**
 * The rest with each limit that was let go set again, at what it asks or, where a plan goes beyond that, at what the plan
 * has; and nobody staying on for longer than the plan needs. That plan keeps all of it.
 */
export const asNeeded = ({ prep, free, crew }: Rest, placed: readonly Placed[]): Prep => {
  const where = new Map(placed.map((p) => [p.task, p]));
  const lags = prep.lags.map((lag, l) => {
    const limit = free.lags.get(l);
    const before = where.get(lag.before);
    const after = where.get(lag.after);
    if (limit === undefined || before === undefined || after === undefined) return lag;
    const gap = after[lag.afterEdge] - before[lag.beforeEdge];
    return { ...lag, most: minutes(Math.max(limit, gap)) };
  });
  const tasks = prep.tasks.map((task) => {
    const latest = free.hours.get(task.id);
    const start = where.get(task.id)?.start;
    if (latest === undefined || start === undefined || task.starts === undefined) return task;
    return { ...task, starts: { from: task.starts.from, to: moment(Math.max(latest, start)) } };
  });
  return { ...prep, lags, tasks, crew: crewAsNeeded(prep, crew, placed) };
};

/** Each cook until the end of the shift or of the last work in what was added to it; with heat on, somebody stays. */
const crewAsNeeded = (prep: Prep, crew: Prep["crew"], placed: readonly Placed[]): Prep["crew"] => {
  const before = new Map(crew.map((cook) => [cook.name, cook.shifts]));
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const work: { readonly cook: string | null; readonly to: number }[] = [];
  for (const { task: id, segments, cook } of placed)
    for (const [s, segment] of (tasks.get(id)?.segments ?? []).entries()) {
      const to = (segments[s] ?? 0) + lengthOf(segment);
      const hot = segment.uses.some(
        (u) => heat.has(u.resource) || prep.ovens.some((o) => o.id === u.resource),
      );
      if (segment.attention !== "none" && lengthOf(segment) > 0) work.push({ cook, to });
      // Somebody stays with the heat: whoever is there longest.
      if (segment.manned ?? hot) work.push({ cook: null, to });
    }
  const found = prep.crew.map((cook) => ({
    ...cook,
    shifts: cook.shifts.map((shift, s) => {
      const own = before.get(cook.name)?.[s]?.to ?? shift.to;
      const until = work
        .filter(({ cook: by, to }) => by === cook.name && own < to && to <= shift.to)
        .reduce((last, { to }) => Math.max(last, to), own as number);
      return { from: shift.from, to: moment(until) };
    }),
  }));
  const open = found.flatMap((cook) => cook.shifts);
  const heated = work.filter(({ cook, to }) => cook === null && !open.some((s) => s.from < to && to <= s.to));
  const last = Math.max(0, ...heated.map(({ to }) => to));
  if (last === 0) return found;
  const stays = prep.crew
    .flatMap((cook, c) =>
      cook.shifts.map((shift, s) => ({ c, s, to: found[c]?.shifts[s]?.to ?? 0, most: shift.to })),
    )
    .filter(({ to, most }) => to < last && last <= most)
    .sort((a, b) => b.to - a.to)[0];
  return found.map((cook, c) => ({
    ...cook,
    shifts: cook.shifts.map((shift, s) =>
      c === stays?.c && s === stays.s ? { from: shift.from, to: moment(last) } : shift,
    ),
  }));
};

/** Who stays on, until when, and for how long. */
export const overtimeOf = (prep: Prep, crew: Prep["crew"]): readonly Overtime[] =>
  prep.crew.flatMap((cook) => {
    const before = crew.find((c) => c.name === cook.name)?.shifts ?? [];
    let until: number = 0;
    let by = 0;
    cook.shifts.forEach((shift, s) => {
      const more = shift.to - (before[s]?.to ?? shift.to);
      by += more;
      if (more > 0) until = shift.to;
    });
    return by > 0 ? [{ cook: cook.name, until: moment(until), by: minutes(by) }] : [];
  });
