import { type Celsius, celsius, type Moment } from "../measure/units.ts";
import type { Plan } from "../model/plan.ts";
import type { OvenResource, Prep } from "../model/prep.ts";

/**
 * The ovens with what each stands at in the plan at this moment: the setting of the latest use that began before it, or
 * on the way from there to the next one, as far as it has to be by now to be ready for it.
 */
export const settingsAt = (prep: Prep, plan: Plan, now: Moment): readonly OvenResource[] => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  return prep.ovens.map((oven) => {
    let at = Number.NEGATIVE_INFINITY;
    let setting: Celsius | null = null;
    let next = Number.POSITIVE_INFINITY;
    let wanted: Celsius | null = null;
    for (const placed of plan.placed) {
      if (placed.oven !== oven.id) continue;
      for (const [k, segment] of (tasks.get(placed.task)?.segments ?? []).entries()) {
        const start = placed.segments[k];
        const use = segment.uses.find((u) => u.celsius !== null);
        if (start === undefined || use === undefined) continue;
        if (start > now && start < next) {
          next = start;
          wanted = use.celsius;
        } else if (start <= now && start >= at) {
          at = start;
          setting = use.celsius;
        }
      }
    }
    // An oven that has been off for a shift is cold again.
    const warm = setting !== null && now - at < longestWarm;
    const from = warm ? (setting as Celsius) : (oven.cold ?? celsius(20));
    return { ...oven, cold: wanted === null ? from : onTheWay(from, wanted, next - now, rateOf(prep)) };
  });
};

/** The slower of heating and cooling, minutes for 10 °C. */
const rateOf = ({ ramp, kitchen }: Prep): number =>
  ramp === undefined ? kitchen.ovenMinutesPer10C : Math.max(ramp.heat, ramp.cool);

/** What an oven stands at that has `left` minutes to reach a setting, when it was turned on in time for it. */
const onTheWay = (from: Celsius, to: Celsius, left: number, minutesPer10C: number): Celsius => {
  if (minutesPer10C <= 0) return from;
  const still = Math.floor(left / minutesPer10C) * 10;
  return Math.abs(to - from) <= still ? from : celsius(from < to ? to - still : to + still);
};

/** An oven keeps its setting for so long after its last use was begun, minutes. Common practice, no source. */
const longestWarm = 6 * 60;
