import type { LevelValue } from "../model/plan.ts";

/** What is known while a plan is looked for: how many tasks have no place, and each level. */
export type PlanProgress = {
  readonly unplaced: number;
  readonly levels: readonly LevelValue[];
};

/**
 * How hard to look. Work is counted in tries, never in seconds, so that the same prep gives the same plan everywhere;
 * a caller with a clock may end the search sooner, and hears of the first plan and of each better one.
 */
export type PlanEffort = {
  readonly tries: number;
  /** Conflicts that may be spent on proving that there is nothing better; absent: nothing is proved. */
  readonly proof?: number;
  readonly seed: number;
  readonly keepGoing?: () => boolean;
  readonly tell?: (progress: PlanProgress) => void;
};
