/** What an oven starts from when the kitchen opens, °C. */
export const coldOven = 20;

/** Whole minutes an oven needs from one setting to another, up or down. */
export const ovenChange = (from: number, to: number, minutesPer10C: number): number =>
  Math.ceil((Math.abs(to - from) / 10) * minutesPer10C);
