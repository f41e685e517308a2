/** A stream of chance from a seed: the same seed gives the same stream on every machine. */
export type Chance = {
  /** A whole number from 0 to below `below`. */
  readonly below: (below: number) => number;
  /** A number from 0 to below 1. */
  readonly share: () => number;
  /** A number of the standard normal distribution (Box and Muller 1958). */
  readonly normal: () => number;
};

/** A 32-bit generator with one word of state: a Weyl sequence through the finaliser of MurmurHash3 (public domain). */
export const chanceFrom = (seed: number): Chance => {
  let state = seed | 0;
  const next = (): number => {
    state = (state + 0x9e3779b9) | 0;
    let x = state ^ (state >>> 16);
    x = Math.imul(x, 0x85ebca6b);
    x ^= x >>> 13;
    x = Math.imul(x, 0xc2b2ae35);
    x ^= x >>> 16;
    return x >>> 0;
  };
  return {
    below: (below) => (below <= 1 ? 0 : next() % below),
    share: () => next() / 0x100000000,
    normal: () =>
      Math.sqrt(-2 * Math.log((next() + 1) / 0x100000001)) * Math.cos((2 * Math.PI * next()) / 0x100000000),
  };
};
