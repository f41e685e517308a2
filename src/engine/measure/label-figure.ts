/** A figure as a label prints it: the number, its decimals, and whether it stands for "less than that". */
export type LabelFigure = {
  readonly value: number;
  readonly decimals: number;
  /** True when it is printed as "less than": the amount is not nothing, and too small to state. */
  readonly below: boolean;
};

/** A figure that is printed as it stands. */
export const stated = (value: number, decimals: number): LabelFigure => ({ value, decimals, below: false });

/** "Less than" a figure. */
export const lessThan = (value: number, decimals: number): LabelFigure => ({ value, decimals, below: true });

/**
 * The nearest multiple of a step, ties up. The value is first freed of binary dust (twelve significant figures), so
 * that 2.25 at a step of 0.5 is a tie and 0.125 at 0.01 is 0.13.
 */
export const nearest = (value: number, step: number): number => {
  const steps = Number((value / step).toPrecision(12));
  return Number((Math.floor(steps + 0.5) * step).toPrecision(12));
};
