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
  /** Low, likely, high; the plan is made with the likely length, rounded up to a whole minute. */
  readonly minutes: Estimate<Minutes>;
  readonly attention: Attention;
  readonly station: Station;
  readonly uses: readonly StationUse[];
};

/** A piece of one cook's work, without a break: its segments follow each other. */
export type Task = {
  readonly id: TaskId;
  readonly kind: TaskKind;
  /** Card id. */
  readonly dish: string;
  readonly version: string;
  /** Place in sitting.courses. */
  readonly course: number;
  /** The cook's verb and what it is done to, for display: "peel", ["potatoes", "carrots"]. */
  readonly verb: string;
  readonly objects: readonly string[];
  /** Pieces, portions or grams, when it helps: "24 portions". Facts, words are made in words/. */
  readonly amount: { readonly value: number; readonly unit: "g" | "portion" | "piece" | "batch" } | null;
  readonly segments: readonly Segment[];
  /** Belongs to the last hour anyway: finishing and plating. */
  readonly finishing: boolean;
  /** The words on the card it comes from; null for tasks that the tool adds. */
  readonly span: Span | null;
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
};

/** Equipment of which so many units (or so much space) may be in use at once. */
export type Resource = { readonly id: string; readonly capacity: number };

/** An oven holds one temperature at a time; uses within the tolerance share its shelves. */
export type OvenResource = { readonly id: string; readonly shelves: Count };

/** A course's plates: its plating tasks; the last to end is the landing. */
export type CourseGoal = {
  readonly course: number;
  readonly name: string;
  readonly due: Moment;
  readonly plateTasks: readonly TaskId[];
};

/** Quality lost while a finished thing waits: weight × (plate start − task end). */
export type Hold = {
  readonly task: TaskId;
  readonly plate: TaskId;
  readonly weight: number;
  readonly hot: boolean;
};

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
};
