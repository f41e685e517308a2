/** start[to] ≥ start[from] + weight, in whole periods; a negative weight from an activity to an earlier one is a greatest lag. */
export type StartLag = { readonly from: number; readonly to: number; readonly weight: number };

/**
 * A resource-constrained project as the field states it: activities that run without a break, renewable resources,
 * lags between starts. Activity 0 is the source and the last one the sink, both of no length.
 */
export type Project = {
  readonly lengths: readonly number[];
  /** demands[activity][resource], units while the activity runs. */
  readonly demands: readonly (readonly number[])[];
  readonly capacities: readonly number[];
  readonly lags: readonly StartLag[];
};

/** `proved`: no shorter schedule exists. `none`: shown to have no schedule. `unknown`: none found, none excluded. */
export type ProjectStatus = "proved" | "found" | "none" | "unknown";

/** The best schedule found, and what is known of the rest. */
export type ProjectAnswer = {
  readonly status: ProjectStatus;
  readonly makespan: number | null;
  /** No schedule is shorter than this. */
  readonly bound: number;
  readonly starts: readonly number[] | null;
};

/** How long to look, and how to tell of what is found; the engine itself has no clock. */
export type ProjectEffort = {
  readonly seed: number;
  /** Schedules to generate, or conflicts to learn from; null for no limit but `keepGoing`. */
  readonly steps: number | null;
  /** Asked often; false stops the search at once. */
  readonly keepGoing: () => boolean;
  /** Told at each better schedule or bound. */
  readonly tell: (makespan: number | null, bound: number) => void;
};
