import { foodById } from "../larder/foods.ts";
import { leftBehind } from "../larder/left-behind.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Food } from "../model/food.ts";
import type { Adjustment } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";
import { boiledAway, liquidTimes } from "./boiled-away.ts";
import { loadsOf } from "./vessel-loads.ts";

/** From so many times the card on, strong flavours and raising agents are held back. Common practice, no source. */
const heldBackFrom = 4;
/** What is then taken at least: 75 to 90 % of spices, 80 to 90 % of yeast, 75 to 90 % and more of powders. Common practice, no source. */
const least = { spice: 0.85, yeast: 0.85, "raising-agent": 0.9 } as const;
/** Part of its weight that fried food takes up of the fat. Common practice, no source. */
const takenUp = 0.1;
/** A small pan wants more fat and spirit in step than the card's, up to this. */
const mostMore = 2;

const salts: ReadonlySet<string> = new Set([
  "salt",
  "sea-salt-flakes",
  "smoked-salt",
  "celery-salt",
  "garlic-salt",
  "onion-salt",
  "msg",
]);
const yeasts: ReadonlySet<string> = new Set(["dried-yeast", "fresh-yeast", "instant-yeast"]);
const raisers: ReadonlySet<string> = new Set([
  "baking-powder",
  "phosphate-baking-powder",
  "bicarbonate-of-soda",
]);
const butters: ReadonlySet<string> = new Set([
  "butter",
  "salted-butter",
  "unsalted-butter",
  "ghee",
  "clarified-butter",
]);
const inAPan: ReadonlySet<string> = new Set([
  "fry",
  "stir-fry",
  "brown",
  "sear",
  "sweat",
  "griddle",
  "toast",
  "char-skin",
]);
const deglazes: ReadonlySet<string> = new Set(["deglaze", "flambe"]);
const warmsFat: ReadonlySet<string> = new Set(["heat", "melt", "warm"]);

/** More than four times the card takes no less than at four times it, then so much in step. */
const heldBack = (factor: number, share: number): number =>
  factor > heldBackFrom ? Math.max(share, heldBackFrom / factor) : 1;

/** In step with a surface: the two-thirds power. */
const bySurface = (factor: number): number => Math.min(mostMore, 1 / Math.cbrt(factor));

const usersOf = (dish: Dish, place: number): readonly Action[] =>
  dish.steps.flatMap((step) => step.actions.filter((a) => a.uses.some((u) => u.ingredient === place)));

const takersOf = (dish: Dish, id: string): readonly Action[] =>
  dish.steps.flatMap((step) => step.actions.filter((a) => a.uses.some((u) => u.product === id)));

/** Fat that only films a pan: fried in, or heated alone and then fried in. */
const filmsAPan = (dish: Dish, place: number): boolean => {
  const users = usersOf(dish, place);
  return (
    users.length > 0 &&
    users.every((user) => {
      if (inAPan.has(user.technique ?? "")) return user.station === "burner";
      const alone = user.uses.every((u) => u.ingredient === place);
      const takers = takersOf(dish, user.id);
      const fried = takers.length > 0 && takers.every((t) => inAPan.has(t.technique ?? ""));
      return warmsFat.has(user.technique ?? "") && alone && fried;
    })
  );
};

/** Fat to deep-fry in: one panful for any amount, and what the food takes up of it. */
const panfulTimes = (dish: Dish, place: number, factor: number): number => {
  const loads = loadsOf(dish);
  const fat = dish.ingredients[place]?.grams?.likely ?? 0;
  const pots = dish.steps.flatMap((step) =>
    step.actions.filter((a) => a.technique === "deep-fry" || a.station === "fryer"),
  );
  const food = Math.max(0, ...pots.map((a) => (loads.get(a.id)?.grams ?? 0) - fat));
  const share = fat > 0 ? Math.min(1, (takenUp * food) / fat) : 1;
  return factor > 1 ? (1 + share * (factor - 1)) / factor : 1 / factor;
};

const ofFood = (dish: Dish, place: number, food: Food, factor: number): Adjustment | null => {
  const adjusted = (reason: Adjustment["reason"], times: number): Adjustment => ({ reason, factor: times });
  if (food.shelf === "spices" && !salts.has(food.id)) return adjusted("spice", heldBack(factor, least.spice));
  if (yeasts.has(food.id)) return adjusted("yeast", heldBack(factor, least.yeast));
  if (raisers.has(food.id)) return adjusted("raising-agent", heldBack(factor, least["raising-agent"]));
  if (food.shelf === "oils" && leftBehind(dish, place) === "unknown")
    return adjusted("panful", panfulTimes(dish, place, factor));
  if ((food.shelf === "oils" || butters.has(food.id)) && filmsAPan(dish, place))
    return adjusted("pan-surface", bySurface(factor));
  const users = usersOf(dish, place);
  if (
    food.diet.includes("alcohol") &&
    users.length > 0 &&
    users.every((a) => deglazes.has(a.technique ?? ""))
  )
    return adjusted("pan-surface", bySurface(factor));
  return null;
};

/** What lines are multiplied by beside the factor, by their place; lines that go in step have none. */
export type Adjustments = ReadonlyMap<number, Adjustment>;

/**
 * What each line of a card is multiplied by beside the factor, by its place; lines that go in step have none. Salt,
 * thickeners and setting agents go in step: they are shares of what they are in, and that goes in step. Never so that a
 * larger factor takes less of anything; nothing at the card's own size.
 */
export const adjustAmounts = (dish: Dish, factor: number, kitchen: Kitchen): Adjustments => {
  const found = new Map<number, Adjustment>();
  if (!(factor > 0) || Math.abs(factor - 1) < 1e-9) return found;
  dish.ingredients.forEach((line, place) => {
    const food = line.food === null ? null : foodById(line.food);
    const adjustment = food === null || line.equipment ? null : ofFood(dish, place, food, factor);
    if (adjustment !== null && adjustment.factor !== 1) found.set(place, adjustment);
  });
  const away = boiledAway(dish);
  if (away !== null)
    for (const place of away.lines)
      found.set(place, { reason: "boils-away", factor: liquidTimes(away, factor, kitchen) });
  return found;
};
