/** What an oven that is off starts from, °C. */
export const coldOven = 20;

/** Whole minutes an oven needs from one setting to another; a millionth is the arithmetic, not the oven. */
export const ovenChange = (
  from: number,
  to: number,
  ramp: { readonly heat: number; readonly cool: number },
): number => Math.max(0, Math.ceil((Math.abs(to - from) / 10) * (to > from ? ramp.heat : ramp.cool) - 1e-6));
