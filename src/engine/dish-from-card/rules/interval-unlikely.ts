import { makeFinding } from "../../findings/make-finding.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";

/** What is to be done every so often comes round not once in the time that is stated: a baste every hour in 30 minutes. */
export const intervalUnlikely: Rule = {
  code: "interval-unlikely",
  check: (dish) =>
    placedActions(dish).flatMap(({ action }) => {
      const { every, minutes } = action;
      if (every === null || minutes === null || minutes.assumed || every <= minutes.high) return [];
      return [
        makeFinding("interval-unlikely", dish.source, action.span, {
          verb: action.verb,
          every: Math.round(every),
          minutes: Math.round(minutes.high),
        }),
      ];
    }),
};
