import type { Chance } from "../search/chance.ts";
import { calmEnd } from "./place.ts";
import type { Schedule } from "./schedule.ts";

/** How insertion goes on: penalties grow with each failure, and the work is counted. */
export type Insertion = {
  /** How often each node failed to find a place; decides who may throw out whom. */
  readonly penalty: Int32Array;
  /** Throws left. */
  throws: number;
  /** Spots that may still be looked at to make room. */
  looks: number;
  readonly chance: Chance | null;
  /** Minutes by which a node counts as later than it is, when it is decided what is placed next; null: none. */
  readonly noise: Int32Array | null;
  /** Work that nothing hurries throws out other work before it goes into the quiet hours. */
  readonly quiet: boolean;
  /** Gives up at the first task that finds no place. */
  readonly strict: boolean;
};

/** Spots looked at for each throw, so that the work of one insertion is bounded. */
const looksEach = 8;

export const freshInsertion = (
  schedule: Schedule,
  throws: number,
  chance: Chance | null,
  noise: Int32Array | null,
  strict: boolean,
  quiet = false,
): Insertion => ({
  penalty: new Int32Array(schedule.model.nodes.length),
  throws,
  looks: throws * looksEach,
  chance,
  noise,
  strict,
  quiet,
});

/** Narrows a node's window to before the quiet hours, where it has time before them. */
export const keepQuiet = (schedule: Schedule, node: number): void => {
  const task = schedule.model.nodes[node];
  if (!task) return;
  const to = calmEnd(schedule.model, task, schedule.latest[node] as number);
  if (to >= (schedule.earliest[node] as number)) schedule.latest[node] = to;
};
