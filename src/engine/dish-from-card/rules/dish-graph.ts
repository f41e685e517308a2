import type { Action, Dish, Step } from "../../model/dish.ts";

/** An action and the step it stands in. */
export type Placed = { readonly action: Action; readonly step: Step };

/** Every action of a dish, in the order of the method. */
export const placedActions = (dish: Dish): readonly Placed[] => {
  const known = kept.get(dish);
  if (known !== undefined) return known;
  const placed = dish.steps.flatMap((step) => step.actions.map((action) => ({ action, step })));
  kept.set(dish, placed);
  return placed;
};

// Rules ask for them once an ingredient.
const kept = new WeakMap<Dish, readonly Placed[]>();

/** The actions that work on an ingredient, at once or as a part of what an earlier one made; in the order of the method. */
export const actionsOn = (dish: Dish, ingredient: number): readonly Placed[] => {
  const own = followed.get(dish) ?? new Map<number, readonly Placed[]>();
  followed.set(dish, own);
  const known = own.get(ingredient);
  if (known !== undefined) return known;
  const found = follow(dish, ingredient);
  own.set(ingredient, found);
  return found;
};

// Several rules follow the same foods.
const followed = new WeakMap<Dish, Map<number, readonly Placed[]>>();

const follow = (dish: Dish, ingredient: number): readonly Placed[] => {
  const made = new Set<string>();
  return placedActions(dish).filter(({ action }) => {
    const touches = action.uses.some(
      (u) => u.ingredient === ingredient || (u.product !== null && made.has(u.product)),
    );
    if (touches) made.add(action.id);
    return touches;
  });
};

// Steps that are searched behind an action; more are no single dish.
const reach = 40;

/** What the method tells from the sentence of an action on, some forty steps far. */
export const toldFrom = (dish: Dish, { action, step }: Placed): string => {
  const at = Math.max(0, action.span.start - step.span.start);
  const from = Math.max(0, step.text.slice(0, at).search(/[^.!?]*$/));
  const next = dish.steps.indexOf(step) + 1;
  return [step.text.slice(from), ...dish.steps.slice(next, next + reach).map((s) => s.text)].join("\n");
};

const base = /\b(?:dough|pastry|batter|pasta|starter|leaven|levain)\b/i;
const eaten = /\b(?:serve|eat|eaten|spoons?|bowls? to|glasses)\b/i;

/** A card that makes what is baked on another: a dough, a pastry, a batter, and nothing is said of eating it. */
export const isBase = (dish: Dish): boolean =>
  base.test(dish.title) && !dish.steps.some((step) => step.phase === "to-serve" || eaten.test(step.text));
