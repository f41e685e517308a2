import { limitsFor } from "../larder/limits.ts";
import type { Hold, Prep } from "../model/prep.ts";
import { type Note, overKeeping, type Pointed, pointAt } from "./pointed.ts";
import { between, type Timeline } from "./timeline.ts";

/** What waits hot between its last heat and its plate: kept hot, or counted as time under the limit. */
export const hotWaitPoints = (timeline: Timeline, prep: Prep, note: Note): readonly Pointed[] =>
  prep.holds.filter((hold) => hold.hot).flatMap((hold) => hotWaitPoint(hold, timeline, note));

const hotWaitPoint = (hold: Hold, timeline: Timeline, note: Note): readonly Pointed[] => {
  const made = timeline.get(hold.task);
  const plate = timeline.get(hold.plate);
  const dish = made === undefined ? null : note.dish(made.task.dish);
  if (made === undefined || plate === undefined || dish === null) return [];
  const wait = between(made.end, plate.end);
  if (wait === 0) return [];
  const limits = [...limitsFor(note.region, "hold-hot"), ...limitsFor(note.region, "off-heat")];
  const { task } = made;
  const pointed = pointAt({
    hazard: "hot-holding",
    dish,
    task,
    shown: limits,
    counted: limits,
    length: wait,
  });
  // The card's own limit ends when it is taken to the plates, as the plan has it; those of safety when the last plate is done.
  const untilPlated = between(made.end, plate.start);
  const tooLong = overKeeping(dish, task.span, "hot", untilPlated);
  return [{ ...pointed, findings: [...pointed.findings, ...tooLong] }];
};
