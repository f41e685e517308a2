/**
 * Minutes to heat a mass: mass × specific heat (kJ/(kg·K)) × rise (K) ÷ (power (kW) × efficiency).
 * Losses are in the efficiency; nothing boils off before the end.
 */
export const heatingMinutes = (of: {
  readonly kilos: number;
  readonly specificHeat: number;
  readonly rise: number;
  readonly kilowatts: number;
  readonly efficiency: number;
}): number => (of.kilos * of.specificHeat * of.rise) / (of.kilowatts * of.efficiency) / 60;
