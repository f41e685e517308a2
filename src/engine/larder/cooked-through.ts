import type { Action, Dish, Swap } from "../model/dish.ts";
import { hotStations } from "../model/food.ts";
import type { Measured } from "../model/menu.ts";
import { foodById } from "./foods.ts";
import { techniqueById } from "./techniques.ts";

/**
 * True when, by the words of the card, everything that is used of an ingredient goes through a technique that cooks
 * raw animal food when done as usual: at once, or after the action that takes it up. False when any of it does not, or
 * when no step uses it. It says what the card does, never that the food is safe.
 */
export const isCookedThrough = (dish: Dish, ingredient: number): boolean => {
  const { users, ends } = methodOf(dish);
  const food = dish.ingredients[ingredient]?.food ?? null;
  const egg = food !== null && (foodById(food)?.hazards.includes("raw-egg") ?? false);
  return (
    users.get(ingredient)?.every((user) => {
      const end = ends.get(user);
      return isCooked(end) || (egg && end?.thickened === true);
    }) ?? false
  );
};

/** What becomes of an action's food, there and in all that takes it up later. */
type End = {
  /** The highest core temperature that is stated on the way; null when none is. */
  readonly core: number | null;
  /** Some action on the way cooks. */
  readonly cooks: boolean;
  /** Some action on the way brings a liquid on the stove as hot as egg must be. */
  readonly thickened: boolean;
};

type Method = {
  /** The actions that take up each ingredient. */
  readonly users: ReadonlyMap<number, readonly Action[]>;
  readonly ends: ReadonlyMap<Action, End>;
};

const kept = new WeakMap<Dish, Method>();

// Asked for once an ingredient.
const methodOf = (dish: Dish): Method => {
  const known = kept.get(dish);
  if (known !== undefined) return known;
  const actions = dish.steps.flatMap((step) => step.actions);
  const users = new Map<number, Action[]>();
  for (const action of actions)
    for (const { ingredient } of action.uses) {
      if (ingredient === null) continue;
      const list = users.get(ingredient);
      if (list === undefined) users.set(ingredient, [action]);
      else if (list.at(-1) !== action) list.push(action);
    }
  const method = { users, ends: endsOf(actions) };
  kept.set(dish, method);
  return method;
};

/**
 * The least middle that is reached in passing and still counts, in °C. FDA Food Code 3-401.11 has none lower for raw
 * animal food without a long hold; a card that states less means it pink, and a guest must be asked.
 */
const leastCore = 63;

// Where the card says how hot the middle gets, that decides and not the usual way of the technique.
const isCooked = (end: End | undefined): boolean =>
  end !== undefined && (end.core === null ? end.cooks : end.core >= leastCore);

/**
 * The ends of all actions. What takes a product stands behind what makes it, so that one pass from the last action to
 * the first knows all; it is done again until nothing changes, for a broken card may hold a ring.
 */
const endsOf = (actions: readonly Action[]): ReadonlyMap<Action, End> => {
  const takers = takersOf(actions);
  const ends = new Map<Action, End>(
    actions.map((action) => [
      action,
      { core: action.core, cooks: cooks(action), thickened: thickens(action) },
    ]),
  );
  for (let changed = true; changed; ) {
    changed = false;
    for (let at = actions.length - 1; at >= 0; at -= 1) {
      const action = actions[at];
      const own = action === undefined ? undefined : ends.get(action);
      if (action === undefined || own === undefined) continue;
      let { core, cooks: heated, thickened } = own;
      for (const taker of takers.get(action.id) ?? []) {
        const next = ends.get(taker);
        if (next === undefined) continue;
        if (next.core !== null && (core === null || next.core > core)) core = next.core;
        heated ||= next.cooks;
        thickened ||= next.thickened;
      }
      if (core === own.core && heated === own.cooks && thickened === own.thickened) continue;
      ends.set(action, { core, cooks: heated, thickened });
      changed = true;
    }
  }
  return ends;
};

// "Into the oven at 180 °C for 50 minutes" cooks though its verb is to put.
const cooks = (action: Action): boolean =>
  (action.technique !== null && (techniqueById(action.technique)?.kills ?? false)) ||
  (hotStations.has(action.station) && (action.celsius ?? 0) >= 100 && (action.minutes?.likely ?? 0) >= 10);

// "Stir over a low heat to 82 °C": what is stirred has the heat that is stated, which no oven or water bath says of it.
const stirred = new Set("stir whisk heat cook simmer thicken warm".split(" "));

/** Custards: 75 °C, or 70 °C for two minutes (FSA: 70 °C for 2 minutes, 75 °C for 30 seconds). */
const thickens = (action: Action): boolean => {
  const degrees = action.celsius ?? 0;
  const held = action.minutes === null || action.minutes.assumed ? 0 : action.minutes.low;
  return (
    action.station === "burner" &&
    action.technique !== null &&
    stirred.has(action.technique) &&
    degrees <= 100 &&
    (degrees >= 75 || (degrees >= 70 && held >= 2))
  );
};

const keptTakers = new WeakMap<readonly Action[], ReadonlyMap<string, readonly Action[]>>();

/** The actions that take what an action makes, by its id. */
const takersOf = (actions: readonly Action[]): ReadonlyMap<string, readonly Action[]> => {
  const known = keptTakers.get(actions);
  if (known !== undefined) return known;
  const takers = new Map<string, Action[]>();
  for (const action of actions)
    for (const product of new Set(action.uses.map((u) => u.product))) {
      if (product === null) continue;
      const list = takers.get(product);
      if (list === undefined) takers.set(product, [action]);
      else list.push(action);
    }
  keptTakers.set(actions, takers);
  return takers;
};

/**
 * True when an action, or one that takes what it makes, passes a test. Products are followed forward; each action is
 * looked at once, so that a ring in a broken card ends.
 */
export const reachesAction = (
  from: Action,
  actions: readonly Action[],
  test: (action: Action) => boolean,
): boolean => {
  const seen = new Set<string>();
  const queue = [from];
  const takers = takersOf(actions);
  for (let action = queue.pop(); action !== undefined; action = queue.pop()) {
    if (seen.has(action.id)) continue;
    seen.add(action.id);
    if (test(action)) return true;
    queue.push(...(takers.get(action.id) ?? []));
  }
  return false;
};

/**
 * The same for a food of the menu. What a swap brings in goes where the ingredients went that it replaces. A food of a
 * card that the dish uses may be cooked there or here.
 */
export const isFoodCookedThrough = (
  dish: Dish,
  swaps: readonly number[],
  measured: Measured,
  card: Dish | null,
): boolean => {
  if (card !== null && measured.cardIngredient !== null && isCookedThrough(card, measured.cardIngredient))
    return true;
  if (measured.ingredient !== null) return isCookedThrough(dish, measured.ingredient);
  const swap = swapOf(dish, swaps, measured);
  return swap !== null && swap.out.length > 0 && swap.out.every((at) => isCookedThrough(dish, at));
};

/** The swap of a version that brings in a food; null when it is on the dish's own list. */
export const swapOf = (dish: Dish, swaps: readonly number[], measured: Measured): Swap | null =>
  measured.ingredient !== null
    ? null
    : (swaps
        .map((at) => dish.swaps[at])
        .find((s) => s?.comes.some((c) => c.food === measured.food && c.name === measured.name)) ?? null);
