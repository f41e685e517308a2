import type { Span } from "../model/span.ts";
import type { Unit } from "./work.ts";

/** The words on the card that units come from; null for none. */
export const spanOf = (units: readonly Unit[]): Span | null => {
  if (units.length === 0) return null;
  return {
    start: Math.min(...units.map((u) => u.action.span.start)),
    end: Math.max(...units.map((u) => u.action.span.end)),
  };
};
