import { moment } from "../measure/units.ts";
import type { Placed } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import { type Network, networkOf } from "../sequence/network.ts";
import { varianceOf } from "../sequence/spread.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/** What waits for what in a schedule as it stands. */
export type Order = {
  readonly network: Network;
  /** Node of each stage. */
  readonly nodeOf: Int32Array;
};

export const orderOf = (prep: Prep, schedule: Schedule): Order => {
  const index = new Map(prep.tasks.map((task, n) => [task.id, n]));
  const network = networkOf(prep, { placed: standing(prep, schedule) });
  return { network, nodeOf: Int32Array.from(network.stages, (stage) => index.get(stage.task.id) ?? 0) };
};

/** Where everything stands, without why. */
export const standing = (prep: Prep, { model, start, cook, oven }: Schedule): readonly Placed[] =>
  prep.tasks.flatMap((task, n): Placed[] => {
    if (start[n] === nowhere) return [];
    let at = (start[n] as number) + model.origin;
    const from = moment(at);
    const segments = task.segments.map((segment) => {
      const own = moment(at);
      at += Math.max(0, Math.ceil(segment.minutes.likely));
      return own;
    });
    return [
      {
        task: task.id,
        start: from,
        end: moment(at),
        segments,
        cook: model.cooks[cook[n] as number] ?? null,
        oven: model.ovenIds[oven[n] as number] ?? null,
        because: [],
      },
    ];
  });

/**
 * The latest start of each node with which every plate that hangs on it still stands where it does, in minutes of the
 * model, and the standard deviation of the chain that leads to those plates: of what waits without a gap, the variances
 * added up, and the root of that.
 */
export const spareNeeded = (
  { network, nodeOf }: Order,
  schedule: Schedule,
  plates: Uint8Array,
): { readonly latest: Float64Array; readonly deviation: Float64Array } => {
  const { stages, into } = network;
  const { model, start } = schedule;
  const count = stages.length;
  const offset = stages.map(
    (stage, k) => stage.planned - model.origin - (start[nodeOf[k] as number] as number),
  );
  const length = stages.map((stage) => stage.plannedEnd - stage.planned);
  const variance = stages.map(({ segment }) => varianceOf(segment));
  // Forwards: the variance of what leads to each stage, as far as no gap before it takes it up.
  const led = new Float64Array(count);
  for (let k = 0; k < count; k += 1) {
    for (const wait of into[k] ?? []) {
      if (wait.from >= k) continue;
      const own = (led[wait.from] as number) + (wait.ofEnd ? (variance[wait.from] ?? 0) : 0);
      const ends = (stages[wait.from]?.planned ?? 0) + (wait.ofEnd ? (length[wait.from] ?? 0) : 0) + wait.lag;
      const gap = (stages[k]?.planned ?? 0) - ends;
      if (gap < Math.sqrt(own)) led[k] = Math.max(led[k] as number, own);
    }
  }
  // Backwards: how late each may begin, and the widest chain that it is a part of.
  const latest = new Float64Array(model.nodes.length).fill(Number.POSITIVE_INFINITY);
  const deviation = new Float64Array(model.nodes.length);
  for (let n = 0; n < model.taskCount; n += 1) if (plates[n] === 1) latest[n] = start[n] as number;
  for (let k = 0; k < count; k += 1) {
    const node = nodeOf[k] as number;
    if (plates[node] === 1)
      deviation[node] = Math.max(deviation[node] as number, Math.sqrt(led[k] as number));
  }
  for (let k = count - 1; k >= 0; k -= 1) {
    const node = nodeOf[k] as number;
    const at = (latest[node] as number) + (offset[k] ?? 0);
    for (const wait of into[k] ?? []) {
      const before = nodeOf[wait.from] as number;
      if (before === node || plates[before] === 1 || wait.from >= k) continue;
      const end = at - wait.lag - (wait.ofEnd ? (length[wait.from] ?? 0) : 0);
      latest[before] = Math.min(latest[before] as number, end - (offset[wait.from] ?? 0));
      deviation[before] = Math.max(deviation[before] as number, deviation[node] as number);
    }
  }
  return { latest, deviation };
};
