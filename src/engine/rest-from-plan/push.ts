import { type Moment, moment } from "../measure/units.ts";
import type { Placed, Plan } from "../model/plan.ts";
import type { Prep, Task, TaskId } from "../model/prep.ts";
import { networkOf } from "../sequence/network.ts";

/**
 * The plan's own order of cooks, ovens and equipment, with the running tasks as they go on: each task at its planned
 * hour, or later where what it waits for is later. It may break a greatest lag or a shift; the checker tells.
 */
export const push = (
  rest: Prep,
  plan: Plan,
  goingOn: ReadonlyMap<TaskId, Task>,
  now: Moment,
): readonly Placed[] => {
  const tasks = new Map(rest.tasks.map((task) => [task.id, task]));
  const kept: readonly Placed[] = plan.placed.flatMap((placed): Placed[] => {
    const task = tasks.get(placed.task);
    if (task === undefined) return [];
    const on = goingOn.has(placed.task);
    const start = on ? now : Math.max(placed.start, task.starts?.from ?? now);
    return [laid(placed, task, start)];
  });
  const { stages, into, span } = networkOf(rest, { ...plan, placed: kept });
  const start = new Float64Array(stages.length);
  const lengths = stages.map(({ segment }) => Math.ceil(segment.minutes.likely));
  for (const [k, stage] of stages.entries()) start[k] = stage.planned;
  // Whole tasks move: a later segment that must wait takes the whole task with it, so that no gap opens in it.
  for (let pass = 0, moved = true; moved && pass < stages.length; pass += 1) {
    moved = false;
    for (const [k, stage] of stages.entries()) {
      for (const wait of into[k] ?? []) {
        if (stages[wait.from]?.task === stage.task) continue;
        const from = (start[wait.from] ?? 0) + (wait.ofEnd ? (lengths[wait.from] ?? 0) : 0) + wait.lag;
        const at = wait.untilEnd ? from - lengthOf(stage.task) : from;
        const by = Math.ceil(at) - (start[k] ?? 0);
        if (by <= 0 || goingOn.has(stage.task.id)) continue;
        const own = span.get(stage.task.id);
        for (let j = own?.first ?? k; j <= (own?.last ?? k); j += 1)
          if (stages[j]?.task === stage.task) start[j] = (start[j] ?? 0) + by;
        moved = true;
      }
    }
  }
  return kept.map((placed): Placed => {
    const first = span.get(placed.task)?.first;
    const task = tasks.get(placed.task);
    if (first === undefined || task === undefined) return placed;
    return laid(placed, task, start[first] ?? placed.start);
  });
};

const lengthOf = (task: Task): number =>
  task.segments.reduce((sum, segment) => sum + Math.ceil(segment.minutes.likely), 0);

const laid = (placed: Placed, task: Task, start: number): Placed => {
  let at = start;
  const segments = task.segments.map((segment) => {
    const own = moment(at);
    at += Math.ceil(segment.minutes.likely);
    return own;
  });
  return { ...placed, start: moment(start), end: moment(at), segments };
};
