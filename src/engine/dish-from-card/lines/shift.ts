import type { Amount } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";

/** A span of a line as a span of the whole text. */
export const shifted = (span: Span, by: number): Span => ({ start: span.start + by, end: span.end + by });

/** Amounts with their spans counted from the start of the whole text. */
export const shiftedAmounts = (amounts: readonly Amount[], by: number): readonly Amount[] =>
  amounts.map((a) => ({ ...a, span: shifted(a.span, by) }));
