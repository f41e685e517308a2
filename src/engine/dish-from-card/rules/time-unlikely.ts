import { makeFinding } from "../../findings/make-finding.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

/** The longest, in minutes, that anybody means with these verbs. Common practice, no source. */
const longest: ReadonlyMap<string, number> = new Map(
  Object.entries({
    fry: 90,
    "stir-fry": 60,
    sear: 60,
    "deep-fry": 60,
    saute: 60,
    blanch: 30,
    whisk: 60,
    whip: 60,
    beat: 60,
    toast: 60,
    poach: 240,
    grill: 180,
    bake: 600,
    knead: 60,
    blend: 60,
    scramble: 45,
  }),
);

/** A length that is hours where minutes are meant. */
export const timeUnlikely: Rule = {
  code: "time-unlikely",
  check: (dish) =>
    placedActions(dish).flatMap(({ action, step }) => {
      const most = longest.get(action.technique ?? "");
      const stated = action.minutes;
      if (most === undefined || stated === null || stated.assumed || stated.low <= most) return [];
      const hours = findIn(step, /\bh(?:ou)?rs?\b/i);
      const inside = hours !== null && hours.start >= action.span.start && hours.end <= action.span.end + 20;
      return [
        makeFinding(
          "time-unlikely",
          dish.source,
          action.span,
          { verb: action.verb, minutes: Math.round(stated.likely) },
          inside && hours !== null
            ? { fixes: [{ kind: "write-time", edits: [replaceWords(hours, "minutes")] }] }
            : {},
        ),
      ];
    }),
};
