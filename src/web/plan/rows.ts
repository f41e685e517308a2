import type { Attention, Placed, Plan, Prep, Task, TaskId } from "#engine/index.ts";

/** A stretch of a bar with one kind of attention. */
type BarPart = { readonly from: number; readonly to: number; readonly attention: Attention };

/** Segments of a placed task that follow each other in one row, drawn as one bar. */
export type Bar = {
  readonly task: Task;
  /** The first of its segments. */
  readonly segment: number;
  /** Moments. */
  readonly from: number;
  readonly to: number;
  readonly parts: readonly BarPart[];
  /** The setting, in ovens. */
  readonly celsius: number | null;
};

type RowGroup = "hands" | "burners" | "ovens" | "other";

/** A pair of hands or a piece of equipment; bars that overlap lie in lanes of their own. */
export type Row = {
  readonly id: string;
  readonly name: string;
  readonly group: RowGroup;
  readonly lanes: readonly (readonly Bar[])[];
};

/** When each segment of a placed task runs. */
export const barsOf = (placed: Placed, task: Task): readonly Bar[] =>
  task.segments.map((segment, i) => {
    const from = placed.segments[i] ?? placed.start;
    const to = placed.segments[i + 1] ?? placed.end;
    return {
      task,
      segment: i,
      from,
      to,
      parts: [{ from, to, attention: segment.attention }],
      celsius: segment.uses.find((u) => u.celsius !== null)?.celsius ?? null,
    };
  });

/** The attention of a single segment's bar. */
export const attentionOf = (bar: Bar): Attention => bar.parts[0]?.attention ?? "none";

/** Joins the bars of one task that follow each other without a break, so that a task is one thing to look at. */
export const joined = (bars: readonly Bar[]): readonly Bar[] => {
  const done: Bar[] = [];
  for (const bar of bars) {
    const last = done.at(-1);
    if (last !== undefined && last.segment + last.parts.length === bar.segment)
      done[done.length - 1] = {
        ...last,
        to: bar.to,
        parts: [...last.parts, ...bar.parts],
        celsius: last.celsius ?? bar.celsius,
      };
    else done.push(bar);
  }
  return done;
};

/** Spreads bars over as few lanes as they need, each bar in the first that is free. */
export const lanesOf = (bars: readonly Bar[]): readonly (readonly Bar[])[] => {
  const lanes: Bar[][] = [];
  for (const bar of [...bars].sort((a, b) => a.from - b.from || b.to - a.to)) {
    const free = lanes.find((lane) => (lane.at(-1)?.to ?? -Infinity) <= bar.from);
    if (free === undefined) lanes.push([bar]);
    else free.push(bar);
  }
  return lanes;
};

/** True when somebody is at it. */
export const attended = (bar: Bar): boolean => bar.parts.some((p) => p.attention !== "none");

/** All rows of a plan: each cook, then burners, each oven, and the other equipment that is used. */
export const rowsOf = (prep: Prep, plan: Plan): readonly Row[] => {
  const tasks = new Map<TaskId, Task>(prep.tasks.map((t) => [t.id, t]));
  const placed = plan.placed.flatMap((p) => {
    const task = tasks.get(p.task);
    return task === undefined ? [] : [{ place: p, bars: barsOf(p, task) }];
  });
  const row = (id: string, name: string, group: RowGroup, pick: (p: Placed, b: Bar) => boolean): Row => ({
    id,
    name,
    group,
    lanes: lanesOf(placed.flatMap(({ place, bars }) => joined(bars.filter((b) => pick(place, b))))),
  });
  const uses = (bar: Bar, resource: string): boolean =>
    bar.task.segments[bar.segment]?.uses.some((u) => u.resource === resource) ?? false;
  const inOven = (bar: Bar): boolean =>
    bar.task.segments[bar.segment]?.station === "oven" || uses(bar, "oven");
  const equipment = prep.resources.map((r) =>
    row(`kit-${r.id}`, r.id, r.id === "burner" ? "burners" : "other", (_, b) => uses(b, r.id)),
  );
  return [
    ...prep.crew.map((c) =>
      row(`cook-${c.name}`, c.name, "hands", (p, b) => p.cook === c.name && attended(b)),
    ),
    ...equipment.filter((r) => r.group === "burners"),
    ...prep.ovens.map((o) => row(`oven-${o.id}`, o.id, "ovens", (p, b) => p.oven === o.id && inOven(b))),
    ...equipment.filter((r) => r.group === "other" && r.lanes.length > 0),
  ];
};

/** Minutes of a day that the chart shows: from the first work to the last landing, on whole half hours. */
export type DayWindow = { readonly day: number; readonly from: number; readonly to: number };

const minutesADay = 1440;

/** The days on which somebody works, each with its window. What only stands in a fridge opens no window. */
export const dayWindows = (rows: readonly Row[], landings: readonly number[]): readonly DayWindow[] => {
  const moments = rows
    .filter((r) => r.group === "hands")
    .flatMap((r) => r.lanes.flat())
    .flatMap((b) => [b.from, Math.max(b.from, b.to - 0.001)])
    .concat(landings);
  const days = [...new Set(moments.map((m) => Math.floor(m / minutesADay)))].sort((a, b) => a - b);
  return days.map((day) => {
    const own = moments.filter((m) => Math.floor(m / minutesADay) === day);
    return {
      day,
      from: Math.floor((Math.min(...own) - 5) / 30) * 30,
      to: Math.ceil((Math.max(...own) + 15) / 30) * 30,
    };
  });
};
