import type { Kilowatts } from "../measure/heat-units.ts";
import { type Celsius, type Minutes, minutes, type Share } from "../measure/units.ts";

/** A load in an oven. */
export type OvenLoad = {
  /** Kilowatts of the oven and the share that reaches the food and the walls. */
  readonly power: Kilowatts;
  readonly efficiency: Share;
  readonly setting: Celsius;
  readonly start: Celsius;
  /** Where the food is on the average when the stated time is up. */
  readonly end: Celsius;
  /** kJ a kelvin of the food: kilos × specific heat. */
  readonly capacity: number;
  /** What leaves as steam takes so many times the heat that warms the food. */
  readonly steam: number;
};

/** Walls, racks and air of an oven that cool when a load goes in, kJ a kelvin a kilowatt. Common practice, no source. */
const wallsPerKilowatt = 3;
/** What an oven falls by while its door is open to load it, K. Common practice, no source. */
const doorDrop = 30;
const step = 0.25;

/**
 * Minutes for a load to get where it would in so many minutes in an oven that never falls below its setting. Food takes
 * up heat in step with the difference to the oven; the walls give theirs until the element has made it good. Two bodies,
 * each of one temperature, stepped by quarter minutes. Grows with the load; never below the time asked for.
 */
export const minutesInOven = (load: OvenLoad, unhindered: Minutes): Minutes => {
  const { setting, start, end, capacity, steam } = load;
  if (!(setting > end && end > start && unhindered > 0 && capacity > 0 && load.power > 0)) return unhindered;
  const k = Math.log((setting - start) / (setting - end)) / unhindered;
  const walls = wallsPerKilowatt * load.power;
  const most = load.power * load.efficiency * 60;
  let oven = setting - doorDrop;
  let food: number = start;
  for (let t = 0; t < unhindered * 6; t += step) {
    if (food >= end) return minutes(Math.max(unhindered, t));
    const warms = k * (oven - food) * step;
    const takes = capacity * warms * (1 + steam);
    const gives = Math.min(most * step, takes + (setting - oven) * walls);
    oven += (gives - takes) / walls;
    food += warms;
  }
  return minutes(unhindered * 6);
};
