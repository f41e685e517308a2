import type { Action, Dish } from "../model/dish.ts";
import { techniqueById } from "./techniques.ts";

/**
 * True when, by the words of the card, everything that is used of an ingredient goes through a technique that cooks
 * raw animal food when done as usual: at once, or after the action that takes it up. False when any of it does not, or
 * when no step uses it. It says what the card does, never that the food is safe.
 */
export const isCookedThrough = (dish: Dish, ingredient: number): boolean => {
  const actions = dish.steps.flatMap((step) => step.actions);
  const users = actions.filter((a) => a.uses.some((u) => u.ingredient === ingredient));
  return users.length > 0 && users.every((user) => reachesHeat(user, actions));
};

const cooks = (action: Action): boolean =>
  action.technique !== null && (techniqueById(action.technique)?.kills ?? false);

// Products are followed forward; each action is looked at once, so that a ring in a broken card ends.
const reachesHeat = (from: Action, actions: readonly Action[]): boolean => {
  const seen = new Set<string>();
  const queue = [from];
  for (let action = queue.pop(); action !== undefined; action = queue.pop()) {
    if (seen.has(action.id)) continue;
    seen.add(action.id);
    if (cooks(action)) return true;
    const made = action.id;
    queue.push(...actions.filter((a) => a.uses.some((u) => u.product === made)));
  }
  return false;
};
