// A product that should end in a half may come out a hair below it in binary; this much is forgiven.
const hair = 1e-9;

/** To the nearest whole number, halves up (1234.5 → 1235): how money is rounded to its minor unit. */
export const roundHalfUp = (n: number): number => Math.floor(n + 0.5 + hair * Math.max(1, Math.abs(n)));
