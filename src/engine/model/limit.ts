import type { Celsius } from "../measure/units.ts";
import type { HazardKind } from "./food.ts";
import type { CriticalLimit } from "./safety.ts";
import type { Region } from "./sitting.ts";

/** What a limit is set for: a hazard of a food, any food, or a case that the rule book names. */
export type LimitCase = HazardKind | "any" | "whole-roast" | "room-made" | "egg-to-order" | "sealed-pack";

/** A row of the limit table. */
export type Limit = CriticalLimit & {
  readonly id: string;
  readonly region: Region;
  /** True when the stated time is itself already too long ("less than 2 hours"). */
  readonly under: boolean;
  /** Where the clock of cooling starts; null for other limits. */
  readonly from: Celsius | null;
  readonly applies: readonly LimitCase[];
  /** Stands on the safety sheet; the others are other ways to the same end. */
  readonly main: boolean;
  /** Paragraph or table of the source, and what is to be known about it. */
  readonly where: string;
};
