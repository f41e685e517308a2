/**
 * A quantity as words give it: the least and the most that could be meant, and what most likely is.
 * Invariant: low ≤ likely ≤ high.
 */
export type Estimate<Q extends number> = {
  readonly low: Q;
  readonly likely: Q;
  readonly high: Q;
};

/** A quantity without doubt. */
export const exactly = <Q extends number>(value: Q): Estimate<Q> => ({
  low: value,
  likely: value,
  high: value,
});

/** From two ends; the likely value is their middle. Ends may come in either order. */
export const between = <Q extends number>(a: Q, b: Q): Estimate<Q> => {
  const low = Math.min(a, b) as Q;
  const high = Math.max(a, b) as Q;
  return { low, likely: ((low + high) / 2) as Q, high };
};

/** What a range comes to on the average: a sixth of its ends and four of what is likely. Means add; likely values do not. */
export const meanOf = ({ low, likely, high }: Estimate<number>): number => (low + 4 * likely + high) / 6;

/** Multiplies all three values. A negative factor is taken as zero. */
export const scaleEstimate = <Q extends number>(e: Estimate<Q>, factor: number): Estimate<Q> => {
  const f = Math.max(0, factor);
  return { low: (e.low * f) as Q, likely: (e.likely * f) as Q, high: (e.high * f) as Q };
};

/** Adds value by value: lows with lows, highs with highs. */
export const addEstimates = <Q extends number>(a: Estimate<Q>, b: Estimate<Q>): Estimate<Q> => ({
  low: (a.low + b.low) as Q,
  likely: (a.likely + b.likely) as Q,
  high: (a.high + b.high) as Q,
});
