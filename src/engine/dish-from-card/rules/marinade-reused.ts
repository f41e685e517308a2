import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { findIn, sayBefore } from "./sentence-edits.ts";

const serving =
  /\b(?:serve|drizzle|spoon|pour|dress|brush|toss|dip)\b[^.]{0,60}\bmarinade\b|\bmarinade\b[^.]{0,40}\b(?:over|as a sauce|to serve|on the side|alongside)\b/i;
const boiled = /\b(?:boil|simmer|bubble|reduce|bring)/i;

/** A marinade that raw meat or fish lay in, and that is served without being boiled. Source: USDA FSIS; FSA. */
export const marinadeReused: Rule = {
  code: "marinade-reused",
  check: (dish) => {
    const marinates = placedActions(dish).findIndex(
      ({ action }) =>
        action.technique === "marinate" &&
        dish.ingredients.some((i) =>
          (i.food === null ? [] : (foodById(i.food)?.hazards ?? [])).some((h) =>
            /^raw-(?:poultry|meat|mince|fish)/.test(h),
          ),
        ),
    );
    const from = placedActions(dish)[marinates]?.step.index;
    if (from === undefined) return [];
    const later = dish.steps.filter((step) => step.index > from);
    return later.flatMap((step) => {
      const span = findIn(step, serving);
      const before = later.filter(
        (s) => s.index <= step.index && /marinade/i.test(s.text) && boiled.test(s.text),
      );
      if (span === null || before.length > 0) return [];
      return [
        makeFinding(
          "marinade-reused",
          dish.source,
          span,
          {},
          { fixes: [{ kind: "add-caution", edits: [sayBefore(step, "Boil the marinade for 3 minutes.")] }] },
        ),
      ];
    });
  },
};
