import type { TimeReason } from "../model/time-reason.ts";
import type { Severity } from "./severity.ts";

/** Facts of each finding that the work and its plan can make. */
export type PlanFacts = {
  /** Work needs a station that the kitchen does not have; the task stands without it. */
  "station-missing": { title: string; station: string };
  "nobody-on-shift": { course: string };
  "course-late": { course: string; minutes: number };
  "task-unplaced": { verb: string; title: string };
  /** Several tasks without a place: how many, and each dish with its verbs. */
  "tasks-unplaced": { count: number; tasks: string };
  /** Limits of time that cannot all be kept, whatever the hour: the tasks in a ring, and by how much they miss. */
  "limits-clash": { title: string; tasks: string; minutes: number };
  /** On the night: food that is made waits longer than its limit; how good it is hangs on it. Or plates do not leave together. */
  "waits-over": {
    title: string;
    verb: string;
    minutes: number;
    limit: number;
    by: number;
    together: boolean;
  };
  /** On the night: a limit of time that food safety hangs on is passed. */
  "waits-unsafe": { title: string; verb: string; minutes: number; limit: number; kind: string };
  /** On the night: a course lands after it is due, or asked for. */
  "course-slips": { course: string; minutes: number };
  /** On the night: a cook is needed after the end of the shift. */
  "stays-on": { cook: string; minutes: number };
  /** On the night: no place is left for a task; why, and the equipment that is missing. */
  "nowhere-tonight": { verb: string; title: string; why: string; what: string };
  /** On the night: a running task that cannot go on at once. */
  "held-up": { verb: string; title: string };
  "made-anew": { verb: string; title: string };
  "left-undone": { verb: string; title: string };
  "plan-broken": { rule: string; detail: string };
  "sitting-value-bad": { path: string; why: string };
  /** No keeping is stated for a dish; this many minutes between the end of cooking and the plate were allowed. */
  "keeping-assumed": { title: string; minutes: number; where: string };
  /** The words give no length; the technique's usual one, for this amount, was planned. */
  "minutes-assumed": { title: string; verb: string; minutes: number };
  /** A wait that takes no hands is counted at its longest, not at its usual length, so that it is begun in time. */
  "wait-counted-long": { title: string; verb: string; minutes: number; usual: number };
  /**
   * The words give no length, and it was reckoned from what is there. Grams count the water in the pot, kilowatts the
   * burners or the oven, millimetres the piece or the layer; 0 where they play no part.
   */
  "time-worked-out": {
    title: string;
    verb: string;
    minutes: number;
    low: number;
    high: number;
    by: TimeReason;
    grams: number;
    kilowatts: number;
    millimetres: number;
  };
  /** A length that the card states for its own size is another one for so many times as much. */
  "time-carried": {
    title: string;
    verb: string;
    stated: number;
    minutes: number;
    by: TimeReason;
    factor: number;
    grams: number;
    kilowatts: number;
  };
  /** The kitchen has not the tin of the card: so many of another, and how deep against the card (1.1 is a tenth more). */
  "tin-instead": { title: string; tins: number; tin: string; card: string; deeper: number };
  /** This kitchen has no tin whose floor is near to the card's. */
  "tin-missing": { title: string; tins: number; card: string };
  /** A card that fills tins is made in whole ones: how many, of how many on the card, and how deep against the card (1.1 is a tenth more). */
  "tins-taken": { title: string; tins: number; onCard: number; deeper: number };
  /** A dish wants more vessels of a size at once than there are; it is planned with those there are. */
  "vessels-short": { title: string; vessel: string; wanted: number; has: number };
  /** Vessels that nobody needs again, and the minutes of washing-up that they leave for after the service. */
  "washing-up-after": { vessels: number; minutes: number };
  /** More is asked of one station at once than the kitchen has, so it is done in turns. */
  "station-in-turns": { title: string; station: string; turns: number };
};

/** How grave each finding of the work, the plan and safety is. */
export const planSeverity: { readonly [C in keyof PlanFacts]: Severity } = {
  "station-missing": "stop",
  "nobody-on-shift": "stop",
  "course-late": "warn",
  "task-unplaced": "stop",
  "tasks-unplaced": "stop",
  "limits-clash": "stop",
  "waits-over": "warn",
  "waits-unsafe": "stop",
  "course-slips": "warn",
  "stays-on": "warn",
  "nowhere-tonight": "stop",
  "held-up": "warn",
  "made-anew": "note",
  "left-undone": "note",
  "plan-broken": "stop",
  "sitting-value-bad": "stop",
  "keeping-assumed": "note",
  "minutes-assumed": "note",
  "wait-counted-long": "note",
  "time-worked-out": "note",
  "time-carried": "note",
  "tin-instead": "note",
  "tin-missing": "warn",
  "tins-taken": "note",
  "station-in-turns": "note",
  "vessels-short": "warn",
  "washing-up-after": "note",
};
