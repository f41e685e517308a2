// Bessel's own integral, (1/π)∫ cos(n·τ − x·sin τ) dτ, by the midpoint rule, which is exact to the last digits for a
// periodic integrand once there are more points than |x| and some to spare.
const bessel = (order: 0 | 1, x: number): number => {
  const points = Math.ceil(Math.abs(x)) + 24;
  let sum = 0;
  for (let k = 0; k < points; k++) {
    const tau = (Math.PI * (k + 0.5)) / points;
    sum += Math.cos(order * tau - x * Math.sin(tau));
  }
  return sum / points;
};

/** Bessel function of the first kind, order zero. */
export const besselJ0 = (x: number): number => bessel(0, x);

/** Bessel function of the first kind, order one. */
export const besselJ1 = (x: number): number => bessel(1, x);
