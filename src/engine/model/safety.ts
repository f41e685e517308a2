import type { Celsius, Minutes } from "../measure/units.ts";
import type { HazardKind } from "./food.ts";
import type { TaskId } from "./prep.ts";
import type { Span } from "./span.ts";

export const limitQuantities = [
  "core",
  "reheat",
  "cool-to",
  "hold-hot",
  "off-heat",
  "hold-cold",
  "out-of-cold",
  "keep",
  "freeze",
] as const;
/** What a limit is set on. */
export type LimitQuantity = (typeof limitQuantities)[number];

/** A limit that a rule book sets. The region's own code comes first; local codes decide. */
export type CriticalLimit = {
  /** off-heat and out-of-cold are times outside hold-hot and hold-cold. */
  readonly quantity: LimitQuantity;
  readonly comparator: "at-least" | "at-most";
  readonly celsius: Celsius | null;
  /** Hold time, or the time within which it must be reached; null when none. */
  readonly minutes: Minutes | null;
  /** Row in data/SOURCES.md. */
  readonly source: string;
};

/** A hazard at a place in a dish or in its plan, with the limits that are usually set. It never says that food is safe. */
export type SafetyPoint = {
  readonly hazard:
    | HazardKind
    | "slow-cooling"
    | "hot-holding"
    | "reheating"
    | "cold-holding"
    | "cross-contact";
  readonly dish: string;
  readonly ingredient: number | null;
  readonly task: TaskId | null;
  readonly span: Span | null;
  /** Names for display. */
  readonly names: readonly string[];
  readonly limits: readonly CriticalLimit[];
  /** Guests with a need that makes it graver. */
  readonly guests: readonly string[];
  /** The plan breaks a limit here. */
  readonly broken: boolean;
};

/** All the points of a sitting, by the rule books of its region. */
export type SafetySheet = { readonly points: readonly SafetyPoint[]; readonly region: string };
