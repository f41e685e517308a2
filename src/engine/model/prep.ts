import type { Estimate } from "../measure/estimate.ts";
import type { Celsius, Count, Minutes, Moment } from "../measure/units.ts";
import type { Attention, Station } from "./food.ts";
import type { Kitchen, Shift } from "./sitting.ts";
import type { Span } from "./span.ts";

/** The name of a task, made of its dish, its version and its action; the same for the same words. */
export type TaskId = string;

/** What a task is, so that words can name it. */
export type TaskKind = "mise" | "method" | "wait" | "reheat" | "plate" | "wash";

/** Equipment taken while a segment runs. */
export type StationUse = {
  /** A resource of the prep ("burner", "oven", "fridge", "mixer"). */
  readonly resource: string;
  readonly amount: number;
  /** For ovens: the setting. */
  readonly celsius: Celsius | null;
};

/** Segments of a task run back to back. All attended segments of one task are done by one cook. */
export type Segment = {
  /** Low, likely, high; the plan is made with the likely length, rounded up to a whole minute. Within a range it is the mean that stands there, or the longest of a wait that costs no hands. */
  readonly minutes: Estimate<Minutes>;
  /** The likeliest length, where the plan counts on another; absent: `minutes.likely`. */
  readonly usual?: Minutes;
  readonly attention: Attention;
  readonly station: Station;
  readonly uses: readonly StationUse[];
  /** True when somebody must be in the kitchen meanwhile; absent: when it uses a burner, an oven, a grill or a fryer. */
  readonly manned?: boolean;
};

/** A piece of one cook's work, without a break: its segments follow each other. */
export type Task = {
  readonly id: TaskId;
  readonly kind: TaskKind;
  /** Card id. */
  readonly dish: string;
  readonly version: string;
  /** Other cards that the same work is done for; absent when there are none. */
  readonly alsoFor?: readonly string[];
  /** Place in sitting.courses. */
  readonly course: number;
  /** The cook's verb and what it is done to, for display: "peel", ["potatoes", "carrots"]. */
  readonly verb: string;
  readonly objects: readonly string[];
  /** Pieces, portions or grams, when it helps: "24 portions". Facts, words are made in words/. */
  readonly amount: { readonly value: number; readonly unit: "g" | "portion" | "piece" | "batch" } | null;
  readonly segments: readonly Segment[];
  /** Other ways to do it, each with segments of its own: by machine or by hand, in the steamer or on a burner. The planner chooses. */
  readonly ways?: readonly (readonly Segment[])[];
  /** Board, knife and hands are cleaned down before anything else: raw meat, fish or egg was handled. Its minutes are in the segments. */
  readonly thenClean?: boolean;
  /** Belongs to the last hour anyway: finishing and plating. */
  readonly finishing: boolean;
  /** The words on the card it comes from; null for tasks that the tool adds. */
  readonly span: Span | null;
  /** Cooks, by name, who know how to do it; absent: all do. */
  readonly cooks?: readonly string[];
  /** It begins no sooner than `from` and no later than `to`; absent: whenever it suits. */
  readonly starts?: Shift;
};

/** Why one task must follow another. */
export type LagReason =
  | "uses-product"
  | "method-order"
  | "stated-wait"
  | "hold-limit"
  | "fridge-limit"
  | "serve-soon"
  | "preheat"
  | "wash-before"
  | "plate-together";

/** least ≤ time(after, its edge) − time(before, its edge) ≤ most. */
export type Lag = {
  readonly before: TaskId;
  readonly beforeEdge: "start" | "end";
  readonly after: TaskId;
  readonly afterEdge: "start" | "end";
  readonly least: Minutes;
  /** Null when there is no limit. */
  readonly most: Minutes | null;
  readonly reason: LagReason;
  /** The reason in the words of whoever set it, when they did. */
  readonly why?: string;
};

/** Equipment of which so many units (or so much space) may be in use at once. */
export type Resource = {
  readonly id: string;
  readonly capacity: number;
  /** Resources that count these as well: a pan of 8 litres is also one that holds 3. Absent: none. */
  readonly alsoIn?: readonly string[];
};

/**
 * A pan, tray or container with food in it: taken from the start of one task to the end of another, whatever lies
 * between. Of vessels that come in sizes the resource is "so large or larger", so that a larger one may stand in.
 */
export type VesselStay = {
  readonly resource: string;
  readonly amount: number;
  /** Taken when this task begins; null: since the beginning. */
  readonly from: TaskId | null;
  /** Clean and free again when this task ends, its washing-up; null: it is not needed again, and washed after service. */
  readonly to: TaskId | null;
};

/** An oven holds one temperature at a time; uses within the tolerance share its shelves. */
export type OvenResource = {
  readonly id: string;
  readonly shelves: Count;
  /** What it starts from; absent: 20 °C. */
  readonly cold?: Celsius;
};

/** A course's plates: its plating tasks; the last to end is the landing. */
export type CourseGoal = {
  readonly course: number;
  readonly name: string;
  readonly due: Moment;
  readonly plateTasks: readonly TaskId[];
  /** The plating whose end is the landing: the last to end (so it is when absent), or the first of the list. */
  readonly landsWith?: "last" | "first";
};

/** Quality lost while a finished thing waits: weight × (plate start − task end). What waits cold loses freshness. */
export type Hold = {
  readonly task: TaskId;
  readonly plate: TaskId;
  readonly weight: number;
  readonly hot: boolean;
};

/** On kit that both use, the version that is free from something comes before the one that holds it, where it can. */
export type FreeFrom = { readonly before: TaskId; readonly after: TaskId };

/**
 * What a plan is compared by, each in its own unit, less is better:
 * late: minutes that courses land after they are due; hold: weighted minutes that hot food waits;
 * free-from: pairs of tasks that stand in the wrong order; calm: hands-on minutes of work that is not finishing in
 * the quiet hours; service: the same between a service's first course and its last; freshness: weighted minutes that
 * cold food waits.
 */
export const goalLevels = ["late", "hold", "free-from", "calm", "service", "freshness"] as const;
/** One of the levels. */
export type GoalLevel = (typeof goalLevels)[number];

/** A cook and when they are there. */
export type CrewMember = { readonly name: string; readonly shifts: readonly Shift[] };

/** The work, as plain data, checked once. */
export type Prep = {
  readonly tasks: readonly Task[];
  readonly lags: readonly Lag[];
  readonly courses: readonly CourseGoal[];
  readonly holds: readonly Hold[];
  readonly crew: readonly CrewMember[];
  readonly ovens: readonly OvenResource[];
  /** Burners, fridge litres, machines, pans. */
  readonly resources: readonly Resource[];
  /** Minding units a cook has, and what each kind of attention takes. */
  readonly attention: { readonly capacity: number; readonly hands: number; readonly mind: number };
  readonly kitchen: Kitchen;
  /** What stands in pans, on trays and in containers, and for how long; absent: nothing. */
  readonly stays?: readonly VesselStay[];
  /** Nothing starts before its beginning or ends after its end; absent: half a day around the shifts and due times. */
  readonly span?: Shift;
  /** Minutes an oven takes to heat, and to cool, by 10 °C; absent: the kitchen's own figure both ways. */
  readonly ramp?: { readonly heat: Minutes; readonly cool: Minutes };
  /**
   * When ovens are cold: whenever the kitchen opens, and then somebody is there while they heat (so it is when absent);
   * or once, at the beginning of the span.
   */
  readonly ovensCold?: "at-opening" | "once";
  /** Quiet hours; absent: the hour before each service. */
  readonly calm?: readonly Shift[];
  /** Groups of tasks of which each is done by one cook. */
  readonly sameCook?: readonly (readonly TaskId[])[];
  readonly freeFrom?: readonly FreeFrom[];
  /**
   * Spare is placed where it makes courses surer, for which hot food may be ready so much sooner; 0: only where it costs
   * nothing. Absent: none is placed.
   */
  readonly spareTime?: Minutes;
  /** What the plan is compared by, the weightiest first; absent: all levels, in the order of their list. */
  readonly levels?: readonly GoalLevel[];
};
