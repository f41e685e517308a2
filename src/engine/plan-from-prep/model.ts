import type { CourseGoal, GoalLevel } from "../model/prep.ts";

/** A stretch of a task, from its start: `length` minutes from `offset`. */
export type Stretch = { readonly offset: number; readonly length: number };
export type AttendedStretch = Stretch & { readonly units: number; readonly hands: boolean };
export type ResourceStretch = Stretch & { readonly resource: number; readonly amount: number };
export type OvenStretch = Stretch & { readonly amount: number; readonly celsius: number };

/** Start minutes [from, to], both included, in rising order and apart. */
export type Starts = readonly { readonly from: number; readonly to: number }[];

/** A task as the planner sees it; a landing is a node of no length. */
export type Node = {
  readonly id: string;
  readonly length: number;
  readonly attended: readonly AttendedStretch[];
  readonly resources: readonly ResourceStretch[];
  readonly oven: readonly OvenStretch[];
  /** Stretches in which heat is on and somebody must be in the kitchen, warming up included. */
  readonly hot: readonly Stretch[];
  /** Ovens it may go in; empty when it uses none. */
  readonly ovens: readonly number[];
  /** Cooks who may do its attended stretches. */
  readonly cooks: readonly number[];
  /** Earliest start in each oven of the model, for an oven that is cold at minute 0. */
  readonly ovenReady: readonly number[];
  /** Starts allowed by shifts, open hours and preheating, for each cook; one row when nobody is needed. */
  readonly starts: readonly Starts[];
  /** Starts that some cook could take. */
  readonly anyStarts: Starts;
  /** The hours of its own in which it begins, before shifts and all else are looked at. */
  readonly hours: { readonly from: number; readonly to: number };
  /** Place in `Model.goals`; of a shared task, the first course that waits for it. */
  readonly course: number;
  readonly finishing: boolean;
  readonly dish: string;
  /** Weight of its waiting before the plate, where that counts for more than calm; 0 when waiting costs nothing. */
  readonly weight: number;
  /** The same where it counts for less than calm. */
  readonly coldWeight: number;
  readonly handsMinutes: number;
  /** Where in it the hands begin and end; -1 without hands. */
  readonly handsFrom: number;
  readonly handsTo: number;
};

/** start[to] ≥ start[from] + weight. A most-lag is an arc backwards. */
export type Arc = {
  readonly from: number;
  readonly to: number;
  readonly weight: number;
  /** Place in prep.lags; -1 for the arcs that tie plates to their landing, `passed` past a task that was given up. */
  readonly lag: number;
  readonly most: boolean;
};

/** In place of a lag, for an arc that leads past a task which was given up. */
export const passed = -2;

/** A vessel in use from the start of one task (-1: since the beginning) to the end of another (-1: for good). */
export type Stay = {
  readonly resource: number;
  readonly amount: number;
  readonly from: number;
  readonly to: number;
};

export type Shifts = readonly { readonly from: number; readonly to: number }[];

/** The prep compiled: whole minutes from `origin`, names as numbers. Tasks come first, then one landing a goal. */
export type Model = {
  /** The moment of minute 0. */
  readonly origin: number;
  readonly horizon: number;
  readonly taskCount: number;
  readonly nodes: readonly Node[];
  readonly arcs: readonly Arc[];
  /** Arcs that leave, and that enter, each node. */
  readonly out: readonly (readonly Arc[])[];
  readonly into: readonly (readonly Arc[])[];
  readonly goals: readonly CourseGoal[];
  readonly due: readonly number[];
  /** Node of each goal's landing. */
  readonly landing: readonly number[];
  readonly cooks: readonly string[];
  readonly shifts: readonly Shifts[];
  readonly capacity: {
    readonly cook: number;
    readonly resources: readonly number[];
    readonly shelves: readonly number[];
  };
  readonly resourceIds: readonly string[];
  readonly ovenIds: readonly string[];
  readonly ovenTolerance: number;
  readonly ramp: { readonly heat: number; readonly cool: number };
  readonly holds: readonly {
    readonly task: number;
    readonly plate: number;
    readonly weight: number;
    readonly hot: boolean;
  }[];
  /** Quiet hours [from, to): the last hour before a service, then the service itself. */
  readonly calm: readonly { readonly from: number; readonly due: number; readonly to: number }[];
  /** Tasks that one cook does, group by group. */
  readonly sameCook: readonly (readonly number[])[];
  readonly freeFrom: readonly { readonly before: number; readonly after: number }[];
  /** Vessels of which there are not enough for everything at once; empty for most problems. */
  readonly stays: readonly Stay[];
  /** What schedules are compared by, the weightiest first. */
  readonly levels: readonly GoalLevel[];
};
