import { type Celsius, type Minutes, minutes } from "../measure/units.ts";

/**
 * Bigelow's model of kill by heat: so many minutes at one temperature are worth more at a higher one, tenfold each z
 * degrees. It compares times and temperatures; what is safe is for the codes and for who is licensed to say.
 */
export type Basis = {
  readonly reference: Celsius;
  /** Degrees for a tenfold change, K; a z in °F is divided by 1.8. */
  readonly z: number;
};

/** What one minute at a temperature is worth at the reference. */
const worth = (at: number, { reference, z }: Basis): number => 10 ** ((at - reference) / z);

/** Minutes needed at a temperature for what so many minutes at the reference do. */
export const equivalentTime = (atReference: Minutes, at: Celsius, basis: Basis): Minutes =>
  minutes(atReference / worth(at, basis));

/** A reading of a probe. */
export type Reading = { readonly minute: Minutes; readonly celsius: Celsius };

/**
 * Minutes at the reference that a log of readings is worth, with the temperature running straight between them: the
 * exact integral, since joining the worths by straight lines claims too much. Readings in the order of time.
 */
export const lethality = (log: readonly Reading[], basis: Basis): Minutes => {
  let sum = 0;
  for (let i = 1; i < log.length; i++) {
    const a = log[i - 1];
    const b = log[i];
    if (a === undefined || b === undefined) continue;
    const took = b.minute - a.minute;
    const rise = b.celsius - a.celsius;
    sum +=
      Math.abs(rise) < 1e-9
        ? took * worth(a.celsius, basis)
        : ((took * basis.z) / (Math.LN10 * rise)) * (worth(b.celsius, basis) - worth(a.celsius, basis));
  }
  return minutes(sum);
};

/** D at a temperature from D at the reference: minutes for one tenfold reduction. */
export const decimalReduction = (atReference: Minutes, at: Celsius, basis: Basis): Minutes =>
  minutes(atReference / worth(at, basis));

/** Tenfold reductions that so many minutes at one temperature make. */
export const reductions = (time: Minutes, d: Minutes): number => time / d;
