import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Segment } from "../model/prep.ts";
import type { Kitchen } from "../model/sitting.ts";
import { plateComponent, plateMost, plateSetUp, plateTouch } from "./kitchen-rates.ts";
import type { Unit } from "./work.ts";

/** What is done to each plate at the pass, as the "to serve" words have it. */
export const plateTouches = (units: readonly Unit[]): number =>
  new Set(
    units.filter((u) => u.step.phase === "to-serve" && u.action.station === "hands").map((u) => u.action.id),
  ).size;

/** One dish on all its plates by one pair of hands, and carried to the table where the kitchen says how far that is. */
export const plateSegments = (
  portions: number,
  touches: number,
  carry: Kitchen["carry"],
): readonly Segment[] => {
  const each = Math.min(plateMost, plateComponent + touches * plateTouch);
  const work = [byHand(plateSetUp + portions * each)];
  return carry === undefined ? work : [...work, byHand(Math.ceil(portions / carry.plates) * carry.minutes)];
};

const byHand = (likely: number): Segment => ({
  minutes: { ...exactly(minutes(likely)), low: minutes(likely * 0.7), high: minutes(likely * 1.5) },
  attention: "hands",
  station: "hands",
  uses: [],
});
