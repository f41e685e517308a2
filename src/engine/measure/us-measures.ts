import type { Grams, Millilitres } from "./units.ts";

/** Exact, UCUM [gal_us] and [oz_av]. */
const gallon = 3785.411784;
const ounce = 28.349523125;

/** To the nearest quarter, of a figure read to two decimals: .12 falls, .13 rises. US Armed Forces Recipe Service, A-1. */
export const toQuarter = (n: number): number => Math.round(Math.round(n * 100 + 1e-9) / 25) / 4;

/** A volume in the measures of a US kitchen, largest first; each is used for as much as it holds whole. */
export type UsVolume = {
  readonly gallons: number;
  readonly quarts: number;
  readonly pints: number;
  readonly cups: number;
  readonly tablespoons: number;
  /** In quarters. */
  readonly teaspoons: number;
};

const steps = [
  ["gallons", 1],
  ["quarts", 4],
  ["pints", 2],
  ["cups", 2],
  ["tablespoons", 16],
  ["teaspoons", 3],
] as const;

/**
 * A volume poured out from gallons down to quarter teaspoons. What rounds up to a whole larger measure becomes one. Source:
 * US Armed Forces Recipe Service, A-1, and NAVEDTRA 14163, "Volume Adjustment".
 */
export const usVolume = (volume: Millilitres): UsVolume => {
  const smallest = steps.reduce((product, [, times]) => product * times, 1);
  // The hair gives back what the division takes, so that a whole measure is not poured as a little less than one.
  let quarters = Math.round(toQuarter(Math.max(0, volume / gallon) * smallest + 1e-9) * 4);
  const found: Record<string, number> = {};
  let size = smallest * 4;
  for (const [name, times] of steps) {
    size /= times;
    if (name === "teaspoons") break;
    found[name] = Math.floor(quarters / size);
    quarters -= Math.floor(quarters / size) * size;
  }
  const whole = (name: string): number => found[name] ?? 0;
  return {
    gallons: whole("gallons"),
    quarts: whole("quarts"),
    pints: whole("pints"),
    cups: whole("cups"),
    tablespoons: whole("tablespoons"),
    teaspoons: quarters / 4,
  };
};

/** A weight in pounds and quarter ounces; sixteen ounces are a pound. */
export const usWeight = (weight: Grams): { readonly pounds: number; readonly ounces: number } => {
  const quarters = Math.round(toQuarter(Math.max(0, weight) / ounce + 1e-9) * 4);
  return { pounds: Math.floor(quarters / 64), ounces: (quarters % 64) / 4 };
};
