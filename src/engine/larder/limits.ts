import type { Celsius, Minutes } from "../measure/units.ts";
import type { Limit, LimitCase } from "../model/limit.ts";
import type { LimitQuantity } from "../model/safety.ts";
import type { Region } from "../model/sitting.ts";
import { limitRows } from "./tables/limits.ts";

/** Every limit of the table, in its order. */
export const limits: readonly Limit[] = limitRows;

/**
 * The limits that a region's sheet prints for one thing. A row for the very case stands in front of the row for any
 * food; empty when the region's books say nothing.
 */
export const limitsFor = (
  region: Region,
  quantity: LimitQuantity,
  cases: readonly LimitCase[] = [],
): readonly Limit[] => {
  const rows = limits.filter((l) => l.region === region && l.quantity === quantity && l.main);
  const own = rows.filter((l) => l.applies.some((c) => c !== "any" && cases.includes(c)));
  return own.length > 0 ? own : rows.filter((l) => l.applies.includes("any"));
};

/**
 * How long the middle must stay at a temperature. Between rows of a table the next lower row counts, as the law lists
 * rows and not a curve. Null when the region lists nothing that low: no length of time is given for it.
 */
export const coreHold = (region: Region, case_: LimitCase, celsius: Celsius): Minutes | null => {
  const reached = limits.filter(
    (l) =>
      l.region === region &&
      l.quantity === "core" &&
      l.applies.includes(case_) &&
      l.celsius !== null &&
      l.celsius <= celsius,
  );
  const highest = reached.reduce<Limit | null>(
    (best, l) => (best === null || (l.celsius ?? 0) > (best.celsius ?? 0) ? l : best),
    null,
  );
  return highest?.minutes ?? null;
};

/** True when a length of time is over a limit; "less than 2 hours" is broken at 2 hours, "2 hours at most" after them. */
export const isOver = (limit: Limit, length: Minutes): boolean =>
  limit.minutes !== null && (limit.under ? length >= limit.minutes : length > limit.minutes);
