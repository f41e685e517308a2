import { besselJ0, besselJ1 } from "./bessel.ts";

/** Bodies whose heat flows along one length: through a slab, or from the axis or the middle outwards. */
export const shapes = ["slab", "cylinder", "sphere"] as const;
/** One of the three. */
export type Shape = (typeof shapes)[number];

/** From this Fourier number on, one term of the series is within 2 %. Source: Çengel, Heat and Mass Transfer, 4-2. */
export const oneTermFrom = 0.2;

// Zero at an eigenvalue: slab ζ·sin ζ = Bi·cos ζ, cylinder ζ·J1 = Bi·J0, sphere (1 − Bi)·sin ζ = ζ·cos ζ.
const condition = (shape: Shape, biot: number, zeta: number): number => {
  switch (shape) {
    case "slab":
      return zeta * Math.sin(zeta) - biot * Math.cos(zeta);
    case "cylinder":
      return zeta * besselJ1(zeta) - biot * besselJ0(zeta);
    case "sphere":
      return (1 - biot) * Math.sin(zeta) - zeta * Math.cos(zeta);
  }
};

const root = (f: (x: number) => number, from: number, to: number): number => {
  let low = from;
  let high = to;
  const sign = f(low + 1e-9) > 0;
  for (let i = 0; i < 60 && high - low > 1e-13 * high; i++) {
    const mid = (low + high) / 2;
    if (f(mid) > 0 === sign) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
};

// The nth zero of J0 lies near (n − ¼)π and that of J1 near (n + ¼)π (McMahon), a long way from their neighbours.
const zeroOfJ0 = (n: number): number =>
  root(besselJ0, (n - 0.25) * Math.PI - 0.3, (n - 0.25) * Math.PI + 0.3);
const zeroOfJ1 = (n: number): number =>
  n === 0 ? 0 : root(besselJ1, (n + 0.25) * Math.PI - 0.3, (n + 0.25) * Math.PI + 0.3);

const bracket = (shape: Shape, n: number): readonly [number, number] => {
  switch (shape) {
    case "slab":
      return [(n - 1) * Math.PI, (n - 0.5) * Math.PI];
    case "cylinder":
      return [zeroOfJ1(n - 1), zeroOfJ0(n)];
    case "sphere":
      return [(n - 1) * Math.PI, n * Math.PI];
  }
};

/** The nth eigenvalue of a body at a Biot number, solved by halving; Bi = h·L/k with half the thickness, or the radius, as L. */
export const eigenvalue = (shape: Shape, biot: number, n = 1): number => {
  const [from, to] = bracket(shape, n);
  return root((zeta) => condition(shape, biot, zeta), from, to);
};

/** The weight of an eigenvalue's term at the middle (C1 of the one-term tables). */
export const weightOf = (shape: Shape, zeta: number): number => {
  switch (shape) {
    case "slab":
      return (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta));
    case "cylinder": {
      const j0 = besselJ0(zeta);
      const j1 = besselJ1(zeta);
      return ((2 / zeta) * j1) / (j0 * j0 + j1 * j1);
    }
    case "sphere":
      return (4 * (Math.sin(zeta) - zeta * Math.cos(zeta))) / (2 * zeta - Math.sin(2 * zeta));
  }
};

// How a term falls off from the middle (0) to the surface (1).
const profile = (shape: Shape, zeta: number, at: number): number => {
  const x = zeta * at;
  switch (shape) {
    case "slab":
      return Math.cos(x);
    case "cylinder":
      return besselJ0(x);
    case "sphere":
      return x < 1e-9 ? 1 : Math.sin(x) / x;
  }
};

// What of a term is left on the average over the body.
const mean = (shape: Shape, zeta: number): number => {
  switch (shape) {
    case "slab":
      return Math.sin(zeta) / zeta;
    case "cylinder":
      return (2 * besselJ1(zeta)) / zeta;
    case "sphere":
      return (3 * (Math.sin(zeta) - zeta * Math.cos(zeta))) / zeta ** 3;
  }
};

/** Terms of one body at one Biot number, worked out once. */
export type Series = {
  readonly shape: Shape;
  readonly biot: number;
  /** (T − medium) ÷ (start − medium) at a place from the middle (0) to the surface (1), after a Fourier number α·t/L². */
  readonly left: (fourier: number, at?: number) => number;
  /** The same, on the average over the body: one less the share of all the heat that has flowed. */
  readonly leftOnAverage: (fourier: number) => number;
};

/** Terms beyond which nothing changes at the Fourier numbers of a kitchen. */
const mostTerms = 60;
/** Before this the middle has felt nothing (error below 1e-9). */
const feltFrom = 0.01;

/**
 * The solution for a body that starts at one temperature and is put in a medium of another: one term from Fo = 0.2 on,
 * the series before that. It never leaves 0 to 1.
 */
export const seriesOf = (shape: Shape, biot: number): Series => {
  const terms: { zeta: number; weight: number }[] = [];
  const term = (n: number): { zeta: number; weight: number } => {
    for (let k = terms.length; k <= n; k++) {
      const zeta = eigenvalue(shape, biot, k + 1);
      terms.push({ zeta, weight: weightOf(shape, zeta) });
    }
    return terms[n] ?? { zeta: 1, weight: 0 };
  };
  const sum = (fourier: number, factor: (zeta: number) => number): number => {
    let total = 0;
    const most = fourier > oneTermFrom ? 1 : mostTerms;
    for (let n = 0; n < most; n++) {
      const { zeta, weight } = term(n);
      const fades = Math.exp(-zeta * zeta * fourier);
      total += weight * fades * factor(zeta);
      if (fades < 1e-12) break;
    }
    return Math.min(1, Math.max(0, total));
  };
  return {
    shape,
    biot,
    left: (fourier, at = 0) =>
      fourier <= 0 || (at === 0 && fourier < feltFrom) ? 1 : sum(fourier, (zeta) => profile(shape, zeta, at)),
    leftOnAverage: (fourier) => (fourier <= 0 ? 1 : sum(fourier, (zeta) => mean(shape, zeta))),
  };
};
