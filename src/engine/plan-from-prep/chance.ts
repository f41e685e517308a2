/** A stream of whole numbers below a bound; the same seed gives the same stream on every machine. */
export type Chance = (below: number) => number;

/** A 32-bit generator with one word of state: a Weyl sequence through the finaliser of MurmurHash3 (public domain). */
export const chanceFrom = (seed: number): Chance => {
  let state = seed | 0;
  return (below) => {
    state = (state + 0x9e3779b9) | 0;
    let x = state ^ (state >>> 16);
    x = Math.imul(x, 0x85ebca6b);
    x ^= x >>> 13;
    x = Math.imul(x, 0xc2b2ae35);
    x ^= x >>> 16;
    return below <= 1 ? 0 : (x >>> 0) % below;
  };
};
