import { makeFinding } from "../../findings/make-finding.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayBefore } from "./sentence-edits.ts";

/** Baking that is over in this time is much changed by an oven that is still warming, minutes. Common practice, no source. */
const shortBake = 60;

/** The oven is used for a short bake at a stated heat, and no words have it heated first. */
export const ovenNotPreheated: Rule = {
  code: "oven-not-preheated",
  check: (dish) => {
    const all = placedActions(dish);
    const heats = all.some(({ action }) => action.technique === "preheat");
    if (
      heats ||
      /pre-?heat|heat (?:the|your|an) oven|oven (?:on|to|at)\b|\b(?:hot|moderate|slow) oven/i.test(dish.text)
    )
      return [];
    const bake = all.find(
      ({ action }) =>
        action.station === "oven" &&
        action.celsius !== null &&
        action.minutes !== null &&
        action.minutes.likely <= shortBake,
    );
    if (bake === undefined || bake.action.celsius === null) return [];
    const first = dish.steps[0] ?? bake.step;
    const celsius = Math.round(bake.action.celsius);
    return [
      makeFinding(
        "oven-not-preheated",
        dish.source,
        bake.action.span,
        { celsius },
        { fixes: [{ kind: "add-step", edits: [sayBefore(first, `Heat the oven to ${celsius}°C.`)] }] },
      ),
    ];
  },
};
