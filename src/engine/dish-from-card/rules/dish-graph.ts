import type { Action, Dish, Step } from "../../model/dish.ts";

/** An action and the step it stands in. */
export type Placed = { readonly action: Action; readonly step: Step };

/** Every action of a dish, in the order of the method. */
export const placedActions = (dish: Dish): readonly Placed[] =>
  dish.steps.flatMap((step) => step.actions.map((action) => ({ action, step })));

/** The actions that work on an ingredient, at once or as a part of what an earlier one made; in the order of the method. */
export const actionsOn = (dish: Dish, ingredient: number): readonly Placed[] => {
  const made = new Set<string>();
  return placedActions(dish).filter(({ action }) => {
    const touches = action.uses.some(
      (u) => u.ingredient === ingredient || (u.product !== null && made.has(u.product)),
    );
    if (touches) made.add(action.id);
    return touches;
  });
};
