import type { Station } from "../../model/food.ts";
import type { Lag, Prep } from "../../model/prep.ts";

/** Longest wait, minutes, that is ever offered for hot food below 63 °C (England: SI 2013/2996, Schedule 4; from memory). */
export const longestHotWait = 120;

/** Stations that cool or keep cold. */
const cold: ReadonlySet<Station> = new Set<Station>(["fridge", "freezer", "ice-bath"]);

/**
 * True for a side of a lag that food safety may hang on, so that it is never offered for change: keeping cold or raw
 * food, the wait of anything before it is cooled or chilled, and any stated wait, which may be a thawing, a cooling or a
 * cooking through.
 */
export const isSafety = (prep: Prep, lag: Lag, side: "least" | "most"): boolean => {
  if (side === "least") return lag.reason === "stated-wait";
  const after = prep.tasks.find((task) => task.id === lag.after);
  return (
    lag.reason === "fridge-limit" || (after?.segments ?? []).some((segment) => cold.has(segment.station))
  );
};
