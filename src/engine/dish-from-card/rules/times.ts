import type { Edit } from "../../findings/finding.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Action, Dish } from "../../model/dish.ts";
import { placedActions } from "./dish-graph.ts";

// Cooking and waiting that is over when the pan says so; its usual length needs no remark.
const short = new Set(
  "heat melt warm bring-to-boil bring-to-simmer preheat dissolve deglaze flambe remove-from-heat set-aside keep-warm warm-plates cool cool-quickly thicken serve plate repeat sterilise".split(
    " ",
  ),
);

// From here on a length that was put in moves the plan.
const worthSaying = 4;

/** Cooking, chilling and waiting of which the words state no length, though the plan turns on it. */
export const untimedActions = (
  dish: Dish,
  withCue: boolean,
): readonly { readonly action: Action; readonly assumed: number }[] =>
  placedActions(dish).flatMap(({ action, step }) => {
    const technique = action.technique === null ? null : techniqueById(action.technique);
    if (technique === null || step.phase === "to-serve" || action.minutes?.assumed !== true) return [];
    if (action.station === "hands" || short.has(technique.id) || action.minutes.likely < worthSaying)
      return [];
    if (action.core !== null && !withCue) return [];
    return (action.cue !== null) === withCue ? [{ action, assumed: action.minutes.likely }] : [];
  });

/** Writes a length of time behind the words of an action. */
export const writeTime = (action: Action, words: string): Edit => ({
  span: { start: action.span.end, end: action.span.end },
  text: words,
});
