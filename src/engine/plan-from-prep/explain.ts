import { type Moment, minutes, moment } from "../measure/units.ts";
import type { Cause } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { clashCauses } from "./explain-clash.ts";
import { type Arc, passed, type Shifts, type Stretch } from "./model.ts";
import { costOfStarts, placesOf } from "./objective.ts";
import { crowdedShift } from "./place.ts";
import { type Schedule, type Spot, spotOf } from "./schedule.ts";
import { joinSpans } from "./start-sets.ts";

/** Minutes looked ahead for what holds a task that could stand a minute later. */
const farthest = 600;

/**
 * What keeps a placed task from standing a minute later: lags that are tight, hands or places that are taken, hours, the
 * course itself; where nothing does, what would be worse then. Of a late course also what keeps it from standing earlier.
 */
export const because = (prep: Prep, schedule: Schedule, node: number, spot: Spot): readonly Cause[] => {
  const causes = blocked(prep, schedule, node, spot, 1);
  if (causes.length === 0) causes.push(unblocked(prep, schedule, node, spot));
  const late = schedule.slip[schedule.model.nodes[node]?.course ?? 0] ?? 0;
  if (late > 0) {
    for (const cause of blocked(prep, schedule, node, spot, -1))
      causes.push({ ...cause, earlier: true } as Cause);
  }
  return unique(causes);
};

const idOf = (schedule: Schedule, node: number): string => schedule.model.nodes[node]?.id ?? "";
const at = (schedule: Schedule, minute: number): Moment => moment(minute + schedule.model.origin);

/** Everything that forbids the task a minute later (1) or earlier (-1). */
const blocked = (prep: Prep, schedule: Schedule, node: number, spot: Spot, way: 1 | -1): Cause[] => {
  const next = { ...spot, start: spot.start + way };
  const causes = [...tightLags(prep, schedule, node, spot, way), ...hourCauses(schedule, node, next, way)];
  causes.push(...clashCauses(schedule, node, next));
  const due = way > 0 ? dueCause(schedule, node, spot) : null;
  if (due) causes.push(due);
  return causes;
};

/** Lags with no slack left: those that leave the task for standing later, those that enter it for standing earlier. */
const tightLags = (prep: Prep, schedule: Schedule, node: number, spot: Spot, way: 1 | -1): Cause[] => {
  const { out, into } = schedule.model;
  const arcs: readonly Arc[] = (way > 0 ? out : into)[node] ?? [];
  return arcs.flatMap((arc): Cause[] => {
    const lag = prep.lags[arc.lag];
    const other = way > 0 ? arc.to : arc.from;
    const stands = spotOf(schedule, other);
    if (!stands || (stands.start - spot.start) * way !== arc.weight) return [];
    // Past a task that was given up: what followed it still follows what it followed.
    if (arc.lag === passed) {
      const wait = minutes(Math.max(0, arc.weight - (schedule.model.nodes[arc.from]?.length ?? 0)));
      const past = { reason: "method-order", side: "least", minutes: wait } as const;
      return [{ kind: "lag", task: idOf(schedule, other), ...past }];
    }
    if (!lag) return [];
    const side = arc.most ? "most" : "least";
    return [
      {
        kind: "lag",
        task: idOf(schedule, other),
        reason: lag.reason,
        side,
        minutes: minutes(lag[side] ?? 0),
      },
    ];
  });
};

/** The hours of its cook, of the kitchen, or its own, that a start a minute away would leave. */
const hourCauses = (schedule: Schedule, node: number, next: Spot, way: 1 | -1): Cause[] => {
  const { model } = schedule;
  const task = model.nodes[node];
  const starts = task?.starts[Math.max(next.cook, 0)] ?? [];
  if (!task || starts.some((s) => s.from <= next.start && next.start <= s.to)) return [];
  const shift = next.cook < 0 ? null : edge(model.shifts[next.cook] ?? [], task.attended, next.start, way);
  if (shift !== null) {
    return [{ kind: "shift", cook: model.cooks[next.cook] ?? "", at: at(schedule, shift) }];
  }
  const open = edge(joinSpans(model.shifts.flat()), task.hot, next.start, way);
  return [open === null ? { kind: "fixed" } : { kind: "open", at: at(schedule, open) }];
};

/** Where the span ends that a stretch just leaves; null when every stretch is inside one. */
const edge = (spans: Shifts, stretches: readonly Stretch[], start: number, way: 1 | -1): number | null => {
  for (const { offset, length } of stretches) {
    const from = start + offset;
    const to = from + length;
    if (length === 0 || spans.some((s) => s.from <= from && to <= s.to)) continue;
    const left = spans.find((s) => (way > 0 ? s.to === to - 1 : s.from === from + 1));
    return left === undefined ? null : way > 0 ? left.to : left.from;
  }
  return null;
};

const dueCause = (schedule: Schedule, node: number, spot: Spot): Cause | null => {
  const { model } = schedule;
  for (const arc of model.out[node] ?? []) {
    const goal = model.landing.indexOf(arc.to);
    const landing = spotOf(schedule, arc.to);
    if (goal < 0 || !landing || landing.start !== spot.start + arc.weight) continue;
    return { kind: "due", course: model.goals[goal]?.course ?? 0, at: at(schedule, model.due[goal] ?? 0) };
  }
  return null;
};

/** Nothing forbids it a minute later: then the plan would be worse, or its cook's day too full, or it has slack. */
const unblocked = (prep: Prep, schedule: Schedule, node: number, spot: Spot): Cause => {
  const { model } = schedule;
  const task = model.nodes[node];
  const worse = worseAt(schedule, node, spot.start + 1);
  if (worse === "calm" || worse === "service") {
    const from = spot.start + (task?.handsFrom ?? 0);
    const quiet = model.calm.find((calm) => calm.to > from);
    if (quiet) return { kind: "calm", at: at(schedule, worse === "calm" ? quiet.from : quiet.due) };
  }
  if (worse !== null) return { kind: "level", level: worse };
  const now = task ? crowdedShift(schedule, task, spot.cook, spot.start) : null;
  const then = task ? crowdedShift(schedule, task, spot.cook, spot.start + 1) : null;
  if (then !== null && then !== now) {
    return {
      kind: "spread",
      cook: model.cooks[spot.cook] ?? "",
      at: at(schedule, model.shifts[spot.cook]?.[then]?.to ?? 0),
    };
  }
  let slack = 1;
  while (slack < farthest) {
    const moved = { ...spot, start: spot.start + slack };
    if (worseAt(schedule, node, moved.start + 1) !== null) break;
    if (blocked(prep, schedule, node, moved, 1).length > 0) break;
    slack += 1;
  }
  return { kind: "slack", minutes: minutes(slack) };
};

/** The weightiest level that is worse with the task at another start; null when none is. */
const worseAt = (schedule: Schedule, node: number, start: number) => {
  const { model, slip } = schedule;
  const before = costOfStarts(model, schedule.start, slip);
  const moved = Int32Array.from(schedule.start);
  moved[node] = start;
  const after = costOfStarts(model, moved, slip);
  const place = placesOf(model);
  for (const level of model.levels) {
    const change = (after[place(level)] ?? 0) - (before[place(level)] ?? 0);
    if (change > 0) return level;
    if (change < 0) return null;
  }
  return null;
};

const unique = (causes: readonly Cause[]): readonly Cause[] => {
  const seen = new Set<string>();
  return causes.filter((cause) => {
    const key = JSON.stringify(cause);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
};
