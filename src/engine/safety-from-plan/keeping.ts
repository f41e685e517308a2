import { limitsFor } from "../larder/limits.ts";
import type { LimitCase } from "../model/limit.ts";
import { type Note, overKeeping, type Pointed, pointAt } from "./pointed.ts";
import { between, isCold, nextUse, type Stretch, type Timed, type Timeline } from "./timeline.ts";

/** What stands in the fridge: how cold, and for how long by the region's limits and by the card. */
export const keepingPoints = (timeline: Timeline, note: Note): readonly Pointed[] =>
  [...timeline.values()].flatMap((timed) => {
    const cold = timed.stretches.find((s) => isCold(s) && s.station === "fridge");
    return cold === undefined ? [] : keepingPoint(timed, cold, timeline, note);
  });

const keepingPoint = (timed: Timed, cold: Stretch, timeline: Timeline, note: Note): readonly Pointed[] => {
  const dish = note.dish(timed.task.dish);
  if (dish === null) return [];
  const kept = between(cold.start, nextUse(timeline, timed) ?? cold.end);
  const cases: readonly LimitCase[] = note.hazards(dish.source).has("cooked-rice") ? ["cooked-rice"] : [];
  const keep = limitsFor(note.region, "keep", cases);
  const held = [...limitsFor(note.region, "hold-cold"), ...limitsFor(note.region, "out-of-cold")];
  const pointed = pointAt({
    hazard: "cold-holding",
    dish,
    task: timed.task,
    shown: [...held, ...keep],
    counted: keep,
    length: kept,
  });
  const tooLong = overKeeping(dish, timed.task.span, "fridge", kept);
  return [{ ...pointed, findings: [...pointed.findings, ...tooLong] }];
};
