import { limitsFor } from "../larder/limits.ts";
import { criticalLimit, type Note, type Pointed } from "./pointed.ts";
import type { Timeline } from "./timeline.ts";

/** What is heated again: how hot the middle is usually brought, once. */
export const reheatingPoints = (timeline: Timeline, note: Note): readonly Pointed[] =>
  [...timeline.values()].flatMap(({ task }) => {
    const dish = note.dish(task.dish);
    if (task.kind !== "reheat" || dish === null) return [];
    return [
      {
        point: {
          hazard: "reheating" as const,
          dish: dish.source,
          ingredient: null,
          task: task.id,
          span: task.span,
          names: [dish.title],
          limits: limitsFor(note.region, "reheat").map(criticalLimit),
          guests: [],
          broken: false,
        },
        findings: [],
      },
    ];
  });
