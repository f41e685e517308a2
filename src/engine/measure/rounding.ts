// Half away from zero, at so many decimals.
const roundTo = (value: number, decimals: number): number => {
  const factor = 10 ** decimals;
  // The hair undoes what binary fractions take away, so that 1.005 rounds as a reader of digits expects.
  const scaled = value * factor;
  const hair = Math.abs(scaled) * 1e-12;
  return (Math.sign(scaled) * Math.floor(Math.abs(scaled) + 0.5 + hair)) / factor;
};

// Steps that scales and jugs show, the finest first; a catering scale shows 100 g at any load. Common practice, no source.
const steps = [0.01, 0.05, 0.1, 0.5, 1, 5, 10, 50, 100] as const;

/** A step may be this part of the amount, so that one amount is off by half of it and a ratio of two by all of it. */
const mostStep = 0.029;

/**
 * As a scale or a jug shows it: to the largest of the usual steps (0.1 g, 0.5 g, 1 g, 5 g …) that is no more than 2.9 %
 * of the amount. So no amount moves by more than 1.45 %, and no ratio of two by more than 3 %; what is under half a gram
 * needs finer scales than kitchens have, and is left as it is.
 */
export const roundForScales = (amount: number): number => {
  const size = Math.abs(amount);
  const step = steps.findLast((s) => s <= mostStep * size);
  if (step === undefined) return amount;
  const decimals = step < 0.1 ? 2 : step < 1 ? 1 : 0;
  return roundTo(roundTo(amount / step, 0) * step, decimals);
};
