import { type Celsius, celsius } from "./units.ts";

/** Fahrenheit to Celsius, exact. */
export const celsiusFromFahrenheit = (fahrenheit: number): Celsius => celsius(((fahrenheit - 32) * 5) / 9);

/** Fahrenheit of a gas mark: 25 × mark + 250 from 1 up, 225 for a quarter, 250 for a half. Null below a quarter or over 10. */
export const fahrenheitFromGasMark = (mark: number): number | null => {
  if (mark >= 1 && mark <= 10) return 25 * mark + 250;
  if (mark === 0.5) return 250;
  if (mark === 0.25) return 225;
  return null;
};

// What UK oven charts print, in place of the exact figure; 10 is from memory.
const printed: ReadonlyMap<number, number> = new Map([
  [0.25, 110],
  [0.5, 120],
  [1, 140],
  [2, 150],
  [3, 160],
  [4, 180],
  [5, 190],
  [6, 200],
  [7, 220],
  [8, 230],
  [9, 240],
  [10, 260],
]);

/** The Celsius setting that UK oven charts print for a gas mark ("gas 4" → 180); null when there is no such mark. */
export const celsiusFromGasMark = (mark: number): Celsius | null => {
  const found = printed.get(mark);
  if (found !== undefined) return celsius(found);
  const fahrenheit = fahrenheitFromGasMark(mark);
  return fahrenheit === null ? null : celsius(Math.round(celsiusFromFahrenheit(fahrenheit) / 5) * 5);
};

/** How much lower a fan oven is set than one without, in degrees Celsius. Source: Healthy Kids NSW conversion chart. */
export const fanDifference = 20;
