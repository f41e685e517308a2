import { limitsFor } from "../larder/limits.ts";
import { minutes } from "../measure/units.ts";
import { type Note, type Pointed, pointAt } from "./pointed.ts";
import type { Timeline } from "./timeline.ts";

/** What is heated again: how hot the middle is usually brought, once. */
export const reheatingPoints = (timeline: Timeline, note: Note): readonly Pointed[] =>
  [...timeline.values()].flatMap(({ task }) => {
    const dish = note.dish(task.dish);
    if (task.kind !== "reheat" || dish === null) return [];
    const shown = limitsFor(note.region, "reheat");
    return [pointAt({ hazard: "reheating", dish, task, shown, counted: [], length: minutes(0) })];
  });
