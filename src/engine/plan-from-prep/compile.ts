import { type GoalLevel, goalLevels, type Prep, type Segment, type Task } from "../model/prep.ts";
import { compileStays } from "./compile-stays.ts";
import type {
  Arc,
  AttendedStretch,
  Model,
  Node,
  OvenStretch,
  ResourceStretch,
  Shifts,
  Stretch,
} from "./model.ts";
import { coldOven, ovenChange } from "./oven-change.ts";
import { both, joinSpans, startsInside } from "./start-sets.ts";

/** Room before the first shift and after the last due time or shift, minutes: waits need no cook. */
const margin = 12 * 60;
/** A week and a day; more is no sitting. A span that is stated may be a month. */
const longest = 8 * 24 * 60;
const longestSpan = 31 * 24 * 60;
/** Course times further apart than this belong to two services, each with its own quiet hour. */
const serviceGap = 180;
const quiet = 60;
/** Equipment that is never left on in an empty kitchen. */
const heat = new Set(["burner", "oven", "grill", "fryer"]);

const wholeMinutes = (segment: Segment): number => Math.max(0, Math.ceil(segment.minutes.likely));

/** Turns the prep into numbers. Whatever it cannot use (a lag to a task that is not there) is left out. */
export const compile = (prep: Prep): Model => {
  const moments = [
    ...prep.crew.flatMap((cook) => cook.shifts.flatMap((shift) => [shift.from, shift.to])),
    ...prep.courses.map((goal) => goal.due),
  ] as number[];
  const last = prep.span ? Math.floor(prep.span.to) : Math.ceil(Math.max(0, ...moments)) + margin;
  const first = moments.length === 0 ? 0 : Math.floor(Math.min(...moments)) - margin;
  const origin = prep.span
    ? Math.max(Math.ceil(prep.span.from), last - longestSpan)
    : Math.max(first, last - longest);
  const horizon = Math.max(0, last - origin);
  const ramp = prep.ramp ?? { heat: prep.kitchen.ovenMinutesPer10C, cool: prep.kitchen.ovenMinutesPer10C };
  const shifts: Shifts[] = prep.crew.map((cook) =>
    cook.shifts
      .map((shift) => ({
        from: Math.max(0, Math.ceil(shift.from) - origin),
        to: Math.min(Math.floor(shift.to) - origin, horizon),
      }))
      .filter((shift) => shift.from < shift.to)
      .sort((a, b) => a.from - b.from),
  );
  const open = joinSpans(shifts.flat());
  const goals = [...prep.courses].sort((a, b) => a.due - b.due || a.course - b.course);
  const due = goals.map((goal) => Math.ceil(goal.due) - origin);
  const index = new Map(prep.tasks.map((task, i) => [task.id, i]));
  const goalOf = new Map(goals.map((goal, g) => [goal.course, g]));
  const shared = { prep, ramp, shifts, open, horizon, origin, goalOf };
  const levels = prep.levels ?? goalLevels;
  const rank = (level: GoalLevel): number => (levels.includes(level) ? levels.indexOf(level) : levels.length);
  const weightOf = (task: string, pressing: boolean): number =>
    Math.max(
      0,
      ...prep.holds
        .filter((h) => h.task === task && rank(h.hot ? "hold" : "freshness") < rank("calm") === pressing)
        .map((h) => h.weight),
    );
  const tasks = prep.tasks.map((task) =>
    nodeOf(task, { weight: weightOf(task.id, true), coldWeight: weightOf(task.id, false) }, shared),
  );
  const landings = goals.map(
    (goal, g): Node => ({
      id: `landing ${goal.course}`,
      length: 0,
      attended: [],
      resources: [],
      oven: [],
      hot: [],
      ovens: [],
      cooks: [],
      ovenReady: [],
      starts: [[{ from: 0, to: horizon }]],
      anyStarts: [{ from: 0, to: horizon }],
      hours: { from: 0, to: horizon },
      course: g,
      finishing: true,
      dish: "",
      weight: 0,
      coldWeight: 0,
      handsMinutes: 0,
      handsFrom: -1,
      handsTo: -1,
    }),
  );
  const nodes = [...tasks, ...landings];
  const landing = goals.map((_, g) => tasks.length + g);
  const arcs = [...lagArcs(prep, index, nodes), ...landingArcs(goals, index, nodes, landing)];
  const out: Arc[][] = nodes.map(() => []);
  const into: Arc[][] = nodes.map(() => []);
  for (const arc of arcs) {
    out[arc.from]?.push(arc);
    into[arc.to]?.push(arc);
  }
  return {
    origin,
    horizon,
    taskCount: tasks.length,
    nodes,
    arcs,
    out,
    into,
    goals,
    due,
    landing,
    cooks: prep.crew.map((cook) => cook.name),
    shifts,
    capacity: {
      cook: prep.attention.capacity,
      resources: prep.resources.map((resource) => resource.capacity),
      shelves: prep.ovens.map((oven) => oven.shelves),
    },
    resourceIds: prep.resources.map((resource) => resource.id),
    ovenIds: prep.ovens.map((oven) => oven.id),
    ovenTolerance: prep.kitchen.ovenTolerance,
    ramp,
    holds: prep.holds.flatMap((hold) => {
      const task = index.get(hold.task);
      const plate = index.get(hold.plate);
      return task === undefined || plate === undefined
        ? []
        : [{ task, plate, weight: hold.weight, hot: hold.hot }];
    }),
    calm: prep.calm
      ? prep.calm.map(({ from, to }) => ({ from: from - origin, due: to - origin, to: to - origin }))
      : servicesOf(due),
    sameCook: (prep.sameCook ?? []).map((group) => group.flatMap((id) => index.get(id) ?? [])),
    freeFrom: (prep.freeFrom ?? []).flatMap((pair) => {
      const before = index.get(pair.before);
      const after = index.get(pair.after);
      return before === undefined || after === undefined ? [] : [{ before, after }];
    }),
    stays: compileStays(prep, index),
    levels,
  };
};

type Shared = {
  readonly prep: Prep;
  readonly ramp: Model["ramp"];
  readonly shifts: readonly Shifts[];
  readonly open: Shifts;
  readonly horizon: number;
  readonly origin: number;
  readonly goalOf: ReadonlyMap<number, number>;
};

type Weights = Pick<Node, "weight" | "coldWeight">;

const nodeOf = (
  task: Task,
  weights: Weights,
  { prep, ramp, shifts, open, horizon, origin, goalOf }: Shared,
): Node => {
  const attended: AttendedStretch[] = [];
  const resources: ResourceStretch[] = [];
  const oven: OvenStretch[] = [];
  const hot: Stretch[] = [];
  const preheats: Stretch[] = [];
  let ovens = prep.ovens.map((_, o) => o);
  let offset = 0;
  let impossible = false;
  for (const segment of task.segments) {
    const length = wholeMinutes(segment);
    const stretch = { offset, length };
    if (segment.attention !== "none" && length > 0) {
      const hands = segment.attention === "hands";
      attended.push({ ...stretch, units: hands ? prep.attention.hands : prep.attention.mind, hands });
    }
    for (const use of segment.uses) {
      const named = prep.ovens.findIndex((o) => o.id === use.resource);
      if (use.resource === "oven" || named >= 0) {
        const celsius = use.celsius ?? coldOven;
        oven.push({ ...stretch, amount: use.amount, celsius });
        ovens = ovens.filter(
          (o) => (named < 0 || o === named) && (prep.ovens[o]?.shelves ?? 0) >= use.amount,
        );
        if (prep.ovensCold !== "once") {
          const warm = Math.max(...prep.ovens.map((o) => ovenChange(o.cold ?? coldOven, celsius, ramp)), 0);
          preheats.push({ offset: offset - warm, length: length + warm });
        }
      } else {
        const resource = prep.resources.findIndex((r) => r.id === use.resource);
        if (resource < 0 || (prep.resources[resource]?.capacity ?? 0) < use.amount) impossible = true;
        if (resource >= 0 && length > 0) resources.push({ ...stretch, resource, amount: use.amount });
      }
    }
    if (segment.manned ?? segment.uses.some((use) => isHeat(prep, use.resource))) hot.push(stretch);
    offset += length;
  }
  if (oven.length > 0 && ovens.length === 0) impossible = true;
  const earliest = Math.max(0, task.starts === undefined ? 0 : Math.ceil(task.starts.from) - origin);
  const latest = Math.min(
    horizon - offset,
    task.starts === undefined ? horizon : Math.floor(task.starts.to) - origin,
  );
  const whole = earliest <= latest && !impossible ? [{ from: earliest, to: latest }] : [];
  const inOpen = both(startsInside(hot, open, whole), startsInside(preheats, open, whole));
  const knows = (c: number): boolean => !task.cooks || task.cooks.includes(prep.crew[c]?.name ?? "");
  const starts =
    attended.length === 0
      ? [inOpen]
      : shifts.map((own, c) => (knows(c) ? startsInside(attended, own, inOpen) : []));
  return {
    id: task.id,
    length: offset,
    attended,
    resources,
    oven,
    hot: [...hot, ...preheats],
    ovens: oven.length > 0 ? ovens : [],
    cooks: attended.length > 0 ? shifts.flatMap((_, c) => (knows(c) ? [c] : [])) : [],
    ovenReady: prep.ovens.map((o) =>
      Math.max(0, ...oven.map((use) => ovenChange(o.cold ?? coldOven, use.celsius, ramp) - use.offset)),
    ),
    starts,
    anyStarts: joinSpans(starts.flat()),
    hours: { from: earliest, to: Math.max(earliest, latest) },
    course: goalOf.get(task.course) ?? 0,
    finishing: task.finishing,
    dish: task.dish,
    ...weights,
    handsFrom: attended.find((a) => a.hands)?.offset ?? -1,
    handsTo: attended.reduce((to, a) => (a.hands ? a.offset + a.length : to), -1),
    handsMinutes: attended.reduce((sum, a) => sum + (a.hands ? a.length : 0), 0),
  };
};

const isHeat = (prep: Prep, resource: string): boolean =>
  heat.has(resource) || prep.ovens.some((oven) => oven.id === resource);

const lagArcs = (prep: Prep, index: ReadonlyMap<string, number>, nodes: readonly Node[]): Arc[] =>
  prep.lags.flatMap((lag, l): Arc[] => {
    const from = index.get(lag.before);
    const to = index.get(lag.after);
    if (from === undefined || to === undefined || from === to) return [];
    const edge = (node: number, side: "start" | "end"): number =>
      side === "end" ? (nodes[node]?.length ?? 0) : 0;
    const shift = edge(from, lag.beforeEdge) - edge(to, lag.afterEdge);
    const least = { from, to, weight: Math.ceil(lag.least) + shift, lag: l, most: false };
    if (lag.most === null) return [least];
    return [least, { from: to, to: from, weight: -(Math.floor(lag.most) + shift), lag: l, most: true }];
  });

/** The longest plating of a course ends at its landing, neither before nor after; the others end by then. Or the first alone counts. */
const landingArcs = (
  goals: Model["goals"],
  index: ReadonlyMap<string, number>,
  nodes: readonly Node[],
  landing: readonly number[],
): Arc[] =>
  goals.flatMap((goal, g) => {
    const to = landing[g] ?? 0;
    const plates = goal.plateTasks.flatMap((id) => index.get(id) ?? []);
    const lengthOf = (node: number): number => nodes[node]?.length ?? 0;
    const first = goal.landsWith === "first";
    const anchor = first
      ? plates[0]
      : plates.reduce((best, p) => (lengthOf(p) > lengthOf(best) ? p : best), plates[0] ?? -1);
    return plates.flatMap((p): Arc[] => {
      if (first && p !== anchor) return [];
      const by = { from: p, to, weight: lengthOf(p), lag: -1, most: false };
      if (p !== anchor) return [by];
      return [by, { from: to, to: p, weight: -lengthOf(p), lag: -1, most: true }];
    });
  });

const servicesOf = (due: readonly number[]): Model["calm"] => {
  const services: { from: number; due: number; to: number }[] = [];
  for (const at of due) {
    const last = services.at(-1);
    if (last && at - last.to <= serviceGap) last.to = at;
    else services.push({ from: at - quiet, due: at, to: at });
  }
  return services;
};
