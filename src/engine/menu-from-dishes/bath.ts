import { foodById } from "../larder/foods.ts";
import { leftBehind } from "../larder/left-behind.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { type Loads, loadsOf } from "./vessel-loads.ts";

/** Food stands no longer than this in water that is used again, minutes. Common practice, no source. */
const longestDip = 60;
/** A pan is worked nearly to the brim. Common practice, no source. */
const workingFill = 0.85;

/** What food is cooked in and lifted or drained from: water, what flavours it, and its salt. */
export type Bath = {
  readonly lines: ReadonlySet<number>;
  /** Actions that hold the food and the bath together. */
  readonly shared: ReadonlySet<string>;
  /** Litres at the card's size: the bath alone, and with the food in it. */
  readonly litres: number;
  readonly withFood: number;
  /** What is cooked in it, kilos. */
  readonly foodKilos: number;
};

const grams = (dish: Dish, place: number): number => dish.ingredients[place]?.grams?.likely ?? 0;

const isWater = (dish: Dish, place: number): boolean =>
  dish.ingredients[place]?.food === "water" && grams(dish, place) > 0 && leftBehind(dish, place) === "all";

const isSaltLeft = (dish: Dish, place: number): boolean => {
  const id = dish.ingredients[place]?.food;
  const food = id == null ? null : foodById(id);
  return food !== null && food.shelf !== "oils" && leftBehind(dish, place) === "unknown";
};

/** Litres of these lines at the card's size. */
const litresOf = (dish: Dish, lines: ReadonlySet<number>): number =>
  [...lines].reduce((sum, place) => {
    const id = dish.ingredients[place]?.food;
    const density = (id == null ? null : foodById(id)?.density) ?? 1;
    return sum + grams(dish, place) / Math.max(1, density) / 1000;
  }, 0);

/**
 * The water that a card lists, cooks in on the stove and drains away, with all that went into it before the food; null
 * where there is none, or where the food lies in it for long: a brine is not used again.
 */
export const bathOf = (dish: Dish): Bath | null => {
  const water = dish.ingredients.flatMap(({ index }) => (isWater(dish, index) ? [index] : []));
  if (water.length === 0) return null;
  const loads = loadsOf(dish);
  const actions = dish.steps.flatMap((step) => step.actions);
  const drained = actions.findIndex((a) => a.technique === "drain" && holds(loads, a, water));
  const inWater = actions.slice(0, drained).filter((a) => holds(loads, a, water));
  const lines = new Set([...water, ...beforeFood(dish, loads, inWater)]);
  for (const { index } of dish.ingredients)
    if (isSaltLeft(dish, index) && inWater.some((a) => holds(loads, a, [index]))) lines.add(index);
  const shared = inWater.filter((a) => linesIn(loads, a).some((place) => !lines.has(place)));
  const cooks = shared.filter((a) => a.station === "burner");
  const lies = shared.some((a) => a.station !== "burner" && (a.minutes?.likely ?? 0) > longestDip);
  if (cooks.length === 0 || lies) return null;
  return {
    lines,
    shared: new Set(shared.map((a) => a.id)),
    litres: litresOf(dish, lines),
    foodKilos:
      Math.max(
        ...cooks.map((a) =>
          linesIn(loads, a).reduce((sum, place) => sum + (lines.has(place) ? 0 : grams(dish, place)), 0),
        ),
      ) / 1000,
    withFood: Math.max(...cooks.map((a) => loads.get(a.id)?.litres ?? 0)),
  };
};

const linesIn = (loads: Loads, action: Action): readonly number[] =>
  [...(loads.get(action.id)?.contents.values() ?? [])].map((c) => c.ingredient);

const holds = (loads: Loads, action: Action, lines: readonly number[]): boolean =>
  linesIn(loads, action).some((place) => lines.includes(place));

/** What is in the water before the first that is put in later; nothing when all goes in at once. */
const beforeFood = (dish: Dish, loads: Loads, inWater: readonly Action[]): readonly number[] => {
  const [first] = inWater;
  if (first === undefined) return [];
  const start = linesIn(loads, first);
  const later = inWater.some((a) =>
    linesIn(loads, a).some((place) => !start.includes(place) && !isSaltLeft(dish, place)),
  );
  return later ? start : [];
};

/**
 * What a bath is multiplied by beside the factor: in step with the food until the pots that stand on the burners at once
 * are full; from there on it is used again for the next batch. Common practice, no source. In step where no pans are known.
 */
export const bathTimes = ({ litres, withFood }: Bath, factor: number, kitchen: Kitchen): number => {
  const pots = kitchen.pans
    .flatMap((pan) => Array.from({ length: Math.min(pan.count, 100) }, () => pan.litres))
    .toSorted((a, b) => b - a)
    .slice(0, Math.max(1, kitchen.burners));
  const room = pots.reduce((sum, l) => sum + l, 0) * workingFill * (litres / Math.max(litres, withFood));
  if (!(room > 0) || !(litres > 0) || factor <= 1) return 1;
  return Math.min(1, Math.max(room, litres) / (litres * factor));
};
