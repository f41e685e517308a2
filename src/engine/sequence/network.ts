import type { Plan } from "../model/plan.ts";
import type { Prep, TaskId } from "../model/prep.ts";
import { holders } from "./holders.ts";
import type { Stage } from "./stage.ts";

/** `to` starts no sooner than `lag` after the start or the end of `from`; for the end of a task, of the whole task `to`. */
export type Wait = {
  readonly from: number;
  readonly ofEnd: boolean;
  readonly to: number;
  readonly lag: number;
  readonly untilEnd: boolean;
  /** True when it waits for nothing but the hands of its cook. */
  readonly hands?: true;
};

/** The plan as what must wait for what: the plan's own order of cooks, ovens and equipment is kept. */
export type Network = {
  readonly stages: readonly Stage[];
  /** Waits by the stage that waits. */
  readonly into: readonly (readonly Wait[])[];
  /** How long before its hour each stage may begin without breaking a greatest lag; minutes. */
  readonly ahead: readonly number[];
  /** First and last stage of each placed task. */
  readonly span: ReadonlyMap<TaskId, { readonly first: number; readonly last: number }>;
};

/** Links every segment to those it must wait for: the one before it, the lags, and whoever held its place before. */
export const networkOf = (prep: Prep, plan: Pick<Plan, "placed">): Network => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const stages: Stage[] = plan.placed
    .flatMap((placed): Stage[] => {
      const task = tasks.get(placed.task);
      return (task?.segments ?? []).flatMap((segment, place): Stage[] => {
        const planned = placed.segments[place];
        return task === undefined || planned === undefined
          ? []
          : [
              {
                task,
                segment,
                place,
                planned,
                plannedEnd: placed.segments[place + 1] ?? placed.end,
                cook: placed.cook,
                oven: placed.oven,
              },
            ];
      });
    })
    .sort((a, b) => a.planned - b.planned || a.plannedEnd - b.plannedEnd || compareIds(a, b));
  const span = new Map<TaskId, { first: number; last: number }>();
  for (const [k, { task }] of stages.entries()) {
    const known = span.get(task.id);
    if (known === undefined) span.set(task.id, { first: k, last: k });
    else known.last = k;
  }
  const into: Wait[][] = stages.map(() => []);
  const wait = (from: number, ofEnd: boolean, to: number, lag: number, untilEnd = false): void => {
    if (from !== to) into[to]?.push({ from, ofEnd, to, lag, untilEnd });
  };
  const before = new Map<TaskId, number>();
  for (const [k, { task }] of stages.entries()) {
    const last = before.get(task.id);
    if (last !== undefined) wait(last, true, k, 0);
    before.set(task.id, k);
  }
  for (const lag of prep.lags) {
    // Plates that should stand together do not wait for each other when one is late: they stand at the pass.
    if (lag.reason === "plate-together") continue;
    const source = span.get(lag.before);
    const target = span.get(lag.after);
    if (source === undefined || target === undefined) continue;
    const ofEnd = lag.beforeEdge === "end";
    wait(ofEnd ? source.last : source.first, ofEnd, target.first, lag.least, lag.afterEdge === "end");
  }
  for (const { from, to, lag, hands } of holders(prep, stages)) {
    if (from !== to)
      into[to]?.push({ from, ofEnd: true, to, lag, untilEnd: false, ...(hands ? { hands } : {}) });
  }
  return { stages, into, span, ahead: mayGetAhead(prep, stages, span) };
};

/**
 * A cook who is free begins the next task this much before its hour at most, when what it needs is there. Common
 * practice, no source.
 */
const mostAhead = 15;

/** Nothing that is finished for the plate is begun sooner, nor what may not wait so long for what comes after it. */
const mayGetAhead = (prep: Prep, stages: readonly Stage[], span: Network["span"]): readonly number[] => {
  const most = new Map<TaskId, number>();
  for (const lag of prep.lags) {
    const before = span.get(lag.before);
    const after = span.get(lag.after);
    if (lag.most === null || before === undefined || after === undefined) continue;
    const edge = (at: { first: number; last: number }, side: "start" | "end"): number =>
      (side === "end" ? stages[at.last]?.plannedEnd : stages[at.first]?.planned) ?? 0;
    const left = lag.most - (edge(after, lag.afterEdge) - edge(before, lag.beforeEdge));
    most.set(lag.before, Math.max(0, Math.min(left, most.get(lag.before) ?? mostAhead)));
  }
  const plates = new Set(prep.courses.flatMap((goal) => goal.plateTasks));
  const shiftOf = (stage: Stage): number =>
    prep.crew
      .find((cook) => cook.name === stage.cook)
      ?.shifts.find((shift) => shift.from <= stage.planned && stage.planned < shift.to)?.from ??
    Number.NEGATIVE_INFINITY;
  return stages.map((stage) =>
    stage.task.finishing || plates.has(stage.task.id)
      ? 0
      : Math.min(most.get(stage.task.id) ?? mostAhead, Math.max(0, stage.planned - shiftOf(stage))),
  );
};

const compareIds = (a: Stage, b: Stage): number =>
  a.task.id < b.task.id ? -1 : a.task.id > b.task.id ? 1 : a.place - b.place;
