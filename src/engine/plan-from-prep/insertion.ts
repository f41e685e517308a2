import type { Chance } from "./chance.ts";

/** How insertion goes on: penalties grow with each failure, and the work is counted. */
export type Insertion = {
  /** How often each node failed to find a place; decides who may throw out whom. */
  readonly penalty: number[];
  /** Throws left. */
  throws: number;
  /** Spots that may still be looked at to make room. */
  looks: number;
  readonly chance: Chance | null;
  /** When given, the order follows the windows as they change, give or take this noise; else it is fixed at the start. */
  readonly restless: ((node: number) => number) | null;
};
