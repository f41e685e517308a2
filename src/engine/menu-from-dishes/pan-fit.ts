import { foodById } from "../larder/foods.ts";
import { isFryingPan, panHolds, pansFor } from "../larder/pans.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Kitchen, Pan } from "../model/sitting.ts";
import { fillOfFat, isDeepFry } from "./frying-fat.ts";
import { fryLayer, potGroups } from "./pot-groups.ts";
import type { Loads } from "./vessel-loads.ts";

/** What is worked dry or in fat, for which any pan does: all else on the stove wants one with sides. */
const dry: ReadonlySet<string> = new Set(
  "fry stir-fry brown sear sweat griddle toast char-skin deglaze flambe caramelise reduce glaze".split(" "),
);

/** True for a line that is fat or oil. */
export const isFat = (dish: Dish, place: number): boolean => {
  const id = dish.ingredients[place]?.food;
  const food = id == null ? null : foodById(id);
  return food !== null && (food.shelf === "oils" || (food.nutrients.fat ?? 0) > 60);
};

/** True where an action lies in one layer of its own: what is fried among what is in the pot already does not. */
export const isOneLayer = (dish: Dish, action: Action, loads: Loads): boolean => {
  if (!fryLayer(action) || isDeepFry(action)) return false;
  const groups = potGroups(dish);
  const own = groups.get(action.id);
  for (const { id } of dish.steps.flatMap((step) => step.actions)) {
    if (id === action.id) break;
    const inside = [...(loads.get(id)?.contents.values() ?? [])];
    if (groups.get(id) === own && inside.some((c) => !isFat(dish, c.ingredient))) return false;
  }
  return true;
};

/** True where a frying pan does as well as a pot. */
const isDry = (dish: Dish, action: Action, loads: Loads): boolean =>
  dry.has(action.technique ?? "") ||
  [...(loads.get(action.id)?.contents.values() ?? [])].every((c) => isFat(dish, c.ingredient));

/** Litres that a pan takes of an action at once. */
export const holdsOf = (dish: Dish, action: Action, loads: Loads, pan: Pan): number =>
  isDeepFry(action)
    ? pan.litres * fillOfFat
    : panHolds(pan, isOneLayer(dish, action, loads) ? action : { ...action, technique: null });

/** The pans that an action is done in: frying pans for one layer, pots for what is wet, where the kitchen has them. */
export const pansToUse = (dish: Dish, action: Action, loads: Loads, kitchen: Kitchen): readonly Pan[] => {
  if (isOneLayer(dish, action, loads)) return pansFor(kitchen, action);
  const pans = pansFor(kitchen, { ...action, technique: null });
  if (!isDeepFry(action) && isDry(dish, action, loads)) return pans;
  const deep = pans.filter((pan) => !isFryingPan(pan.name));
  return deep.length > 0 ? deep : pans;
};
