import { foodById } from "../larder/foods.ts";
import { ownVessels } from "../larder/own-vessels.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Food } from "../model/food.ts";
import type { Adjustment } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";
import { bathOf, bathTimes } from "./bath.ts";
import { boiledAway, liquidTimes } from "./boiled-away.ts";
import { fatTimes, fryingOf } from "./frying-fat.ts";
import { coverTimes, steepedIn } from "./steeped.ts";
import { starchTimes, thickenedBy } from "./thickened.ts";

/** From so many times the card on, strong flavours and raising agents are held back. Common practice, no source. */
const heldBackFrom = 4;
/** What is then taken at least: 75 to 90 % of spices, 80 to 90 % of yeast, 75 to 90 % and more of powders. Common practice, no source. */
const least = { spice: 0.85, yeast: 0.85, "raising-agent": 0.9 } as const;
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

/** What is raised in pieces or tins of its own rises there as on the card; in a layer or a bowl it may be deeper. */
const risesAsOnCard = (dish: Dish): boolean =>
  dish.yield?.kind === "pieces" ||
  dish.yield?.kind === "tin" ||
  ownVessels(dish).some(({ noun }) => noun === "tin" || noun === "mould") ||
  !dish.steps.some((step) => step.actions.some((a) => a.station === "oven"));

/** Fat for tins: each is greased whole, however full it is. Common practice, no source. */
const tinsTimes = (dish: Dish, factor: number): number => {
  const count = ownVessels(dish).find(({ noun }) => noun !== "tray")?.count ?? 0;
  return count > 0 ? Math.max(1, Math.ceil(count * factor - 1e-9)) / (count * factor) : 1;
};

const ofFood = (dish: Dish, place: number, food: Food, factor: number): Adjustment | null => {
  const adjusted = (reason: Adjustment["reason"], times: number): Adjustment => ({ reason, factor: times });
  if (food.shelf === "spices" && !salts.has(food.id)) return adjusted("spice", heldBack(factor, least.spice));
  if (yeasts.has(food.id)) return adjusted("yeast", heldBack(factor, least.yeast));
  if (raisers.has(food.id) && !risesAsOnCard(dish))
    return adjusted("raising-agent", heldBack(factor, least["raising-agent"]));
  if (/greas|\btins?\b/.test(dish.ingredients[place]?.purpose ?? ""))
    return adjusted("tins", tinsTimes(dish, factor));
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
 * thickeners and setting agents are shares of what is left of the liquid: water and stock are changed so that it goes in
 * step, else the thickener is. Raising
 * agents do in equal tins and pieces (J. Pastry, 2013: linear for equal tins, less in broad or deep layers). Never so that
 * a larger factor takes less of anything; nothing at the card's own size.
 */
export const adjustAmounts = (dish: Dish, factor: number, kitchen: Kitchen): Adjustments => {
  const found = new Map<number, Adjustment>();
  if (!(factor > 0) || Math.abs(factor - 1) < 1e-9) return found;
  dish.ingredients.forEach((line, place) => {
    const food = line.food === null ? null : foodById(line.food);
    const adjustment = food === null || line.equipment ? null : ofFood(dish, place, food, factor);
    if (adjustment !== null && adjustment.factor !== 1) found.set(place, adjustment);
  });
  const frying = fryingOf(dish);
  if (frying !== null)
    found.set(frying.line, { reason: "panful", factor: fatTimes(frying, factor, kitchen) });
  for (const { lines, litres, foodKilos } of steepedIn(dish)) {
    const times = coverTimes(litres, foodKilos, factor);
    if (times !== 1) for (const place of lines) found.set(place, { reason: "covers", factor: times });
  }
  const bath = bathOf(dish);
  if (bath !== null) {
    const covers = coverTimes(bath.litres, bath.foodKilos, factor);
    const again = bathTimes(bath, factor, kitchen);
    const least: Adjustment =
      again < covers ? { reason: "bath", factor: again } : { reason: "covers", factor: covers };
    for (const place of bath.lines)
      if (least.factor === 1) found.delete(place);
      else found.set(place, least);
  }
  const away = boiledAway(dish);
  if (away !== null)
    for (const place of away.lines)
      found.set(place, { reason: "boils-away", factor: liquidTimes(away, factor, kitchen) });
  for (const thickened of thickenedBy(dish)) {
    const times = starchTimes(thickened, factor, kitchen);
    if (times !== 1) found.set(thickened.line, { reason: "liquid-left", factor: times });
  }
  return found;
};
