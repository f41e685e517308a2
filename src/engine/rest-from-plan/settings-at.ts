import { type Celsius, celsius, type Moment } from "../measure/units.ts";
import type { Plan } from "../model/plan.ts";
import type { OvenResource, Prep } from "../model/prep.ts";

/** The ovens with the setting that each stands at in the plan at this moment: of the latest use that began before it. */
export const settingsAt = (prep: Prep, plan: Plan, now: Moment): readonly OvenResource[] => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  return prep.ovens.map((oven) => {
    let at = Number.NEGATIVE_INFINITY;
    let setting: Celsius | null = null;
    for (const placed of plan.placed) {
      if (placed.oven !== oven.id) continue;
      for (const [k, segment] of (tasks.get(placed.task)?.segments ?? []).entries()) {
        const start = placed.segments[k];
        const use = segment.uses.find((u) => u.celsius !== null);
        if (start === undefined || use === undefined || start > now || start < at) continue;
        at = start;
        setting = use.celsius;
      }
    }
    // An oven that has been off for a shift is cold again.
    const warm = setting !== null && now - at < longestWarm;
    return { ...oven, cold: warm ? (setting as Celsius) : (oven.cold ?? celsius(20)) };
  });
};

/** An oven keeps its setting for so long after its last use was begun, minutes. Common practice, no source. */
const longestWarm = 6 * 60;
