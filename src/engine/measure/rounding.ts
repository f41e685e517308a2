// Half away from zero, at so many decimals.
const roundTo = (value: number, decimals: number): number => {
  const factor = 10 ** decimals;
  // The hair undoes what binary fractions take away, so that 1.005 rounds as a reader of digits expects.
  const scaled = value * factor;
  const hair = Math.abs(scaled) * 1e-12;
  return (Math.sign(scaled) * Math.floor(Math.abs(scaled) + 0.5 + hair)) / factor;
};

/** As scales show it: tenths below 10 g, whole grams below 250, fives below 1 kg, tens below 5 kg, then fifties. */
export const roundForScales = (grams: number): number => {
  const size = Math.abs(grams);
  if (size < 10) return roundTo(grams, 1);
  const step = size < 250 ? 1 : size < 1000 ? 5 : size < 5000 ? 10 : 50;
  return roundTo(grams / step, 0) * step;
};
