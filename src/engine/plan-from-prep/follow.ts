import type { Placed } from "../model/plan.ts";
import { clearBefore } from "./clash.ts";
import { insertAll, openAround } from "./insert.ts";
import { freshInsertion } from "./insertion.ts";
import { cooksOf, putAt } from "./place.ts";
import { nowhere, put, type Schedule, type Spot, setSlip } from "./schedule.ts";

/** Throws allowed for each task that has lost its place. */
const throwsEach = 4;

/**
 * Puts every task where an earlier plan has it, with the cook and the oven it has there, as far as it can stand there
 * still; what cannot is put in anew around the rest. Courses land as late as that plan has them.
 */
export const follow = (schedule: Schedule, plan: readonly Placed[]): void => {
  const { model } = schedule;
  const places = new Map(plan.map((placed) => [placed.task, placed]));
  landAs(schedule, places);
  const nodes = Array.from({ length: model.taskCount }, (_, n) => n).filter(
    (n) => (model.nodes[n]?.anyStarts.length ?? 0) > 0,
  );
  openAround(schedule, [...model.landing, ...nodes]);
  const spots = nodes
    .flatMap((node) => {
      const placed = places.get(model.nodes[node]?.id ?? "");
      return placed === undefined ? [] : [{ node, spot: spotOf(schedule, placed), ends: placed.end }];
    })
    .sort((a, b) => b.ends - a.ends || a.node - b.node);
  for (const { node, spot } of spots) if (canStand(schedule, node, spot)) putAt(schedule, node, spot);
  const left = nodes.filter((n) => schedule.start[n] === nowhere);
  if (left.length > 0)
    insertAll(schedule, left, freshInsertion(schedule, throwsEach * left.length, null, null, false));
};

/** Lets courses land as late as a plan has them. */
const landAs = (schedule: Schedule, places: ReadonlyMap<string, Placed>): void => {
  schedule.model.goals.forEach((goal, g) => {
    const plates = goal.landsWith === "first" ? goal.plateTasks.slice(0, 1) : goal.plateTasks;
    const lands = Math.max(...plates.map((id) => places.get(id)?.end ?? Number.NEGATIVE_INFINITY));
    const slip = Math.ceil(lands - schedule.model.origin) - (schedule.model.due[g] ?? 0);
    setSlip(schedule, g, Number.isFinite(slip) ? Math.max(0, slip) : 0);
  });
};

/** Puts every task where a plan has it, whatever stands against it: the checker tells. */
export const putAsPlanned = (schedule: Schedule, plan: readonly Placed[]): void => {
  const places = new Map(plan.map((placed) => [placed.task, placed]));
  landAs(schedule, places);
  schedule.model.nodes.forEach(({ id }, node) => {
    const placed = places.get(id);
    if (placed === undefined) return;
    const { start, cook, oven } = spotOf(schedule, placed);
    put(schedule, node, start, cook, oven);
  });
};

const spotOf = ({ model }: Schedule, { start, cook, oven }: Placed): Spot => ({
  start: Math.round(start) - model.origin,
  cook: cook === null ? -1 : model.cooks.indexOf(cook),
  oven: oven === null ? -1 : model.ovenIds.indexOf(oven),
});

/** True when a task may begin there: in its hours and windows, by a cook who may do it, with everything it needs free. */
const canStand = (schedule: Schedule, node: number, { start, cook, oven }: Spot): boolean => {
  const task = schedule.model.nodes[node];
  if (!task) return false;
  if (task.attended.length > 0 && !cooksOf(schedule, node, task).includes(cook)) return false;
  if (task.oven.length > 0 && !task.ovens.includes(oven)) return false;
  if (start < (schedule.earliest[node] as number) || start > (schedule.latest[node] as number)) return false;
  if (oven >= 0 && start < (task.ovenReady[oven] ?? 0)) return false;
  const starts = task.starts[Math.max(cook, 0)] ?? [];
  if (!starts.some(({ from, to }) => from <= start && start <= to)) return false;
  return clearBefore(schedule, node, start, cook, oven) === start;
};
