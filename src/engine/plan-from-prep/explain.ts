import { minutes, moment } from "../measure/units.ts";
import type { Cause } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { clashAt, inTheWay } from "./clash.ts";
import { calmEnd, crowdedShift } from "./place.ts";
import { put, type Schedule, type Spot, spotOf, take } from "./schedule.ts";

/** What keeps a placed task from standing a minute later: lags that are tight, hands or places that are taken, shift, quiet hour. */
export const because = (prep: Prep, schedule: Schedule, node: number, spot: Spot): readonly Cause[] => {
  const causes = [...tightLags(prep, schedule, node, spot), ...taken(schedule, node, spot)];
  const late = schedule.slip[schedule.model.nodes[node]?.course ?? 0] ?? 0;
  const due = dueCause(schedule, node, spot);
  if (due) causes.push(due);
  if (late > 0 || causes.length === 0) causes.push(...earlierCauses(prep, schedule, node, spot));
  return causes.length > 0 ? unique(causes) : [quietCause(schedule, node, spot)];
};

const idOf = (schedule: Schedule, node: number): string => schedule.model.nodes[node]?.id ?? "";
const endOf = (schedule: Schedule, node: number, spot: Spot): number =>
  spot.start + (schedule.model.nodes[node]?.length ?? 0);
const at = (schedule: Schedule, minute: number) => moment(minute + schedule.model.origin);

/** Arcs to the tasks that follow with no slack left: moving later would break them. */
const tightLags = (prep: Prep, schedule: Schedule, node: number, spot: Spot): Cause[] =>
  (schedule.model.out[node] ?? []).flatMap((arc): Cause[] => {
    const lag = prep.lags[arc.lag];
    const other = spotOf(schedule, arc.to);
    if (!lag || !other || other.start - spot.start !== arc.weight) return [];
    return [
      {
        kind: "lag",
        task: idOf(schedule, arc.to),
        reason: lag.reason,
        minutes: minutes(arc.most ? (lag.most ?? 0) : lag.least),
      },
    ];
  });

/** Hands, equipment, ovens or shifts that are not free a minute later. */
const taken = (schedule: Schedule, node: number, spot: Spot): Cause[] => {
  const next = { ...spot, start: spot.start + 1 };
  return [...shiftCause(schedule, node, next, 1), ...clashCauses(schedule, node, next)];
};

const clashCauses = (schedule: Schedule, node: number, next: Spot): Cause[] => {
  const spot = spotOf(schedule, node);
  if (!spot) return [];
  take(schedule, node);
  const clash = clashAt(schedule, node, next.start, next.cook, next.oven);
  const others = clash ? inTheWay(schedule, clash).filter((n) => n !== node) : [];
  put(schedule, node, spot.start, spot.cook, spot.oven);
  if (!clash) return [];
  return others.map((other): Cause => {
    const task = idOf(schedule, other);
    const { on } = clash;
    if (on.kind === "cook") return { kind: "cook", task, cook: schedule.model.cooks[on.cook] ?? "" };
    if (on.kind === "resource") {
      return { kind: "resource", task, resource: schedule.model.resourceIds[on.resource] ?? "" };
    }
    const oven = schedule.model.ovenIds[on.oven] ?? "";
    return { kind: "oven", task, oven, changeMinutes: minutes(on.kind === "oven" ? on.change : 0) };
  });
};

const shiftCause = (schedule: Schedule, node: number, next: Spot, sign: 1 | -1): Cause[] => {
  const task = schedule.model.nodes[node];
  const starts = task?.starts[Math.max(next.cook, 0)] ?? [];
  if (!task || next.cook < 0 || starts.some((s) => s.from <= next.start && next.start <= s.to)) return [];
  const cook = schedule.model.cooks[next.cook] ?? "";
  const shifts = schedule.model.shifts[next.cook] ?? [];
  for (const a of task.attended) {
    const from = next.start + a.offset;
    const to = from + a.length;
    if (shifts.some((s) => s.from <= from && to <= s.to)) continue;
    const before = shifts.find((s) => (sign > 0 ? s.to === to - 1 : s.from === from + 1));
    if (before) return [{ kind: "shift", cook, at: at(schedule, sign > 0 ? before.to : before.from) }];
  }
  return [];
};

const dueCause = (schedule: Schedule, node: number, spot: Spot): Cause | null => {
  const { model } = schedule;
  for (const arc of model.out[node] ?? []) {
    const goal = model.landing.indexOf(arc.to);
    const landing = spotOf(schedule, arc.to);
    if (goal < 0 || !landing || landing.start !== endOf(schedule, node, spot)) continue;
    return { kind: "due", course: model.goals[goal]?.course ?? 0, at: at(schedule, model.due[goal] ?? 0) };
  }
  return null;
};

/** For a course that is late: what keeps the task from standing a minute earlier. */
const earlierCauses = (prep: Prep, schedule: Schedule, node: number, spot: Spot): Cause[] => {
  const next = { ...spot, start: spot.start - 1 };
  const lags = (schedule.model.into[node] ?? []).flatMap((arc): Cause[] => {
    const lag = prep.lags[arc.lag];
    const other = spotOf(schedule, arc.from);
    if (!lag || !other || spot.start - other.start !== arc.weight) return [];
    return [
      {
        kind: "lag",
        task: idOf(schedule, arc.from),
        reason: lag.reason,
        minutes: minutes(arc.most ? (lag.most ?? 0) : lag.least),
      },
    ];
  });
  return [...lags, ...shiftCause(schedule, node, next, -1), ...clashCauses(schedule, node, next)];
};

/** Nothing else holds it, so it stands before the quiet hours, or before its course. */
const quietCause = (schedule: Schedule, node: number, spot: Spot): Cause => {
  const { model } = schedule;
  const task = model.nodes[node];
  const quiet = model.calm.find(
    (calm) => task && calmEnd(model, task, spot.start + 1) <= spot.start && calm.to > spot.start,
  );
  if (quiet) return { kind: "calm", at: at(schedule, quiet.from) };
  const shift = task ? crowdedShift(schedule, task, spot.cook, spot.start + 1) : null;
  if (task && shift !== null) {
    const to = schedule.model.shifts[spot.cook]?.[shift]?.to ?? 0;
    return { kind: "spread", cook: schedule.model.cooks[spot.cook] ?? "", at: at(schedule, to) };
  }
  const goal = task?.course ?? 0;
  return { kind: "due", course: model.goals[goal]?.course ?? 0, at: at(schedule, model.due[goal] ?? 0) };
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
