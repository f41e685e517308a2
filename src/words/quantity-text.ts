import { numberText } from "./number-text.ts";

/** Decimals that a cook's scales can show: none from 100 up, one from 10, two below. */
const decimalsFor = (n: number): number => (Math.abs(n) >= 100 ? 0 : Math.abs(n) >= 10 ? 1 : 2);

/** Grams below a kilogram, kilograms from there: "850 g", "2.4 kg", "0.5 g". */
export const massText = (grams: number): string => {
  if (Math.abs(grams) >= 999.5) return `${numberText(grams / 1000, grams >= 10000 ? 1 : 2)} kg`;
  return `${numberText(grams, Math.abs(grams) >= 10 ? 0 : 1)} g`;
};

/** A length of time: "40 s", "5 min", "1 h 30 min", "2 days 4 h". Under a minute it is given in seconds. */
export const durationText = (minutes: number): string => {
  if (!Number.isFinite(minutes)) return "–";
  if (minutes < 0) return `-${durationText(-minutes)}`;
  if (minutes > 0 && minutes < 1) return `${numberText(minutes * 60)} s`;
  const whole = Math.round(minutes);
  const days = Math.floor(whole / 1440);
  const hours = Math.floor((whole % 1440) / 60);
  const rest = whole % 60;
  const parts = [
    days > 0 ? `${days} ${days === 1 ? "day" : "days"}` : "",
    hours > 0 ? `${hours} h` : "",
    rest > 0 && days === 0 ? `${rest} min` : "",
  ].filter((p) => p !== "");
  return parts.length === 0 ? "0 min" : parts.join(" ");
};

/** A temperature in whole degrees, with Fahrenheit beside it where the region cooks in it. */
export const celsiusText = (celsius: number, region = "uk"): string => {
  const c = `${numberText(celsius, 1)} °C`;
  return region === "us" ? `${numberText((celsius * 9) / 5 + 32)} °F (${c})` : c;
};

/** A low and a high value with one unit: "8–10 min", or one value when they agree. */
export const rangeText = (low: number, high: number, unit: string): string => {
  const a = numberText(low, decimalsFor(low));
  const b = numberText(high, decimalsFor(high));
  const tail = unit === "" ? "" : ` ${unit}`;
  return a === b ? `${a}${tail}` : `${a}–${b}${tail}`;
};
