import { makeFinding } from "../../findings/make-finding.ts";
import { techniqueById } from "../../larder/techniques.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";

/** A setting that is not usual for what is done: a scale mixed up, a figure mistyped. */
export const temperatureDoubtful: Rule = {
  code: "temperature-doubtful",
  check: (dish) =>
    placedActions(dish).flatMap(({ action }) => {
      const range = action.technique === null ? null : (techniqueById(action.technique)?.celsius ?? null);
      const celsius = action.celsius;
      if (range === null || celsius === null || (celsius >= range.low && celsius <= range.high)) return [];
      return [
        makeFinding("temperature-doubtful", dish.source, action.span, {
          verb: action.verb,
          celsius,
          low: range.low,
          high: range.high,
        }),
      ];
    }),
};
