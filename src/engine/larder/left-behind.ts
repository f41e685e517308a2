import type { Action, Dish } from "../model/dish.ts";
import type { Contents } from "./contents.ts";
import { reachesAction } from "./cooked-through.ts";
import { foodById } from "./foods.ts";
import { techniqueById } from "./techniques.ts";

/**
 * What of an ingredient does not reach the plate, by the words of the card: "all" of the water that is drained off;
 * an "unknown" part of the oil that food is deep-fried in, and of the salt of water that is drained off; "none" of
 * anything else. Only what is left behind at every use counts.
 */
export const leftBehind = (dish: Dish, ingredient: number): "none" | "unknown" | "all" => {
  const line = dish.ingredients[ingredient];
  const food = line === undefined || line.food === null ? null : foodById(line.food);
  if (food === null) return "none";
  const actions = dish.steps.flatMap((step) => step.actions);
  const users = actions.filter((a) => a.uses.some((u) => u.ingredient === ingredient));
  if (users.length === 0) return "none";
  const goesTo = (test: (action: Action) => boolean): boolean =>
    users.every((user) => reachesAction(user, actions, test));
  if (food.id === "water") return goesTo(drains) ? "all" : "none";
  if (food.shelf === "oils") return goesTo(deepFries) ? "unknown" : "none";
  return salts.includes(food.id) && goesTo(drains) ? "unknown" : "none";
};

/** What goes on from an action: all of it, but the water that is drained off there. */
export const afterDraining = (dish: Dish, action: Action, contents: Contents): Contents =>
  action.technique === "drain"
    ? new Map([...contents].filter(([, { ingredient }]) => leftBehind(dish, ingredient) !== "all"))
    : contents;

const salts: readonly string[] = ["salt", "sea-salt-flakes"];

const drains = (action: Action): boolean => action.technique === "drain";
const deepFries = (action: Action): boolean =>
  action.technique === "deep-fry" ||
  (action.station === "fryer" && techniqueById(action.technique ?? "")?.kills === true);
