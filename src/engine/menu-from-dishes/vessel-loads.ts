import { potSurface, simmerLoss } from "../heat/evaporation.ts";
import { type Contents, contentsOf } from "../larder/contents.ts";
import { foodById } from "../larder/foods.ts";
import { afterDraining } from "../larder/left-behind.ts";
import { isLiquid } from "../larder/liquids.ts";
import { techniqueById } from "../larder/techniques.ts";
import { unlistedWater } from "../larder/unlisted-water.ts";
import type { Action, Dish, Step } from "../model/dish.ts";

/** What stands in a vessel. */
export type Load = { readonly grams: number; readonly litres: number };

/** What each action handles, and the lines that are in it. */
export type Loads = ReadonlyMap<string, Load & { readonly contents: Contents }>;

/** How many times the card's amount of a line an action handles. */
export type Times = (place: number, action: string) => number;

/** Techniques at a simmer over time, whose end is that of the food and not of the liquid; a reduction takes longer instead. */
const simmers: ReadonlySet<string> = new Set(["simmer", "boil", "stew", "braise", "cook", "make-stock"]);
/** Never more of what is in a pot than this is taken to boil away. */
const mostGone = 0.5;

const covered = (step: Step): boolean =>
  /\b(cover|covered|lid)\b/i.test(step.text) &&
  !/uncover|without a lid|lid off|half.cover|partly cover/i.test(step.text);

/** True for what loses water to the air while it cooks. */
export const isSimmer = ({ technique, station }: Action): boolean =>
  simmers.has(technique ?? "") && (station === "burner" || station === "oven");

/** What a simmer or a boil loses to the air, in grams, from so many litres in so many pots. */
export const simmeredAway = (action: Action, step: Step, litres: number, pots: number): number =>
  isSimmer(action)
    ? pots *
      simmerLoss(potSurface(litres / pots), covered(step)).likely *
      Math.max(0, action.minutes?.likely ?? 0)
    : 0;

const goneFrom = (action: Action, step: Step, load: Load, pots: number): number => {
  const reduces = action.station === "burner" && action.technique === "reduce";
  const share = reduces ? (techniqueById("reduce")?.massShare ?? 0) * load.grams : 0;
  return Math.min(mostGone * load.grams, share + simmeredAway(action, step, load.litres, pots));
};

/**
 * What each action handles: its ingredients, what earlier actions made less what boiled away there, and the water that
 * the words cover it with. Nothing counts twice that is taken out and put back. Liquid fills the gaps between pieces.
 */
export const loadsOf = (
  dish: Dish,
  times: Times = () => 1,
  potsFor: (litres: number) => number = () => 1,
): Loads => {
  const byPlace = new Map(dish.ingredients.map((i) => [i.index, i]));
  const made = new Map<string, Contents>();
  const gone = new Map<string, number>();
  const loads = new Map<string, Load & { readonly contents: Contents }>();
  for (const step of dish.steps)
    for (const action of step.actions) {
      const contents = contentsOf(action, (id) => made.get(id));
      made.set(action.id, afterDraining(dish, action, contents));
      const shares = new Map<number, number>();
      for (const { ingredient, share } of contents.values())
        shares.set(ingredient, Math.min(1, (shares.get(ingredient) ?? 0) + share));
      const foods = [...shares].map(([place, share]) => {
        const line = byPlace.get(place);
        const weight = (line?.grams?.likely ?? 0) * share * times(place, action.id);
        return { food: line?.food ?? null, grams: weight };
      });
      const before = action.uses.reduce(
        (sum, use) => sum + (use.product === null ? 0 : use.share * (gone.get(use.product) ?? 0)),
        0,
      );
      const load = standing(foods, before, unlistedWater(action, step, foods));
      loads.set(action.id, { ...load, contents });
      gone.set(action.id, before + goneFrom(action, step, load, potsFor(load.litres)));
    }
  return loads;
};

const standing = (
  foods: readonly { readonly food: string | null; readonly grams: number }[],
  gone: number,
  water: number,
): Load => {
  let bulk = 0;
  let filled = water;
  let all = 0;
  for (const { food, grams } of foods) {
    const row = food === null ? null : foodById(food);
    const density = row?.density != null && row.density > 0 ? row.density : 1;
    const pours = row !== null && (isLiquid(row) || row.shelf === "oils");
    all += grams;
    if (!pours) bulk += grams / density / 1000;
    filled += grams / (pours ? density : Math.max(1, density)) / 1000;
  }
  const left = Math.max(0, 1 - (all > 0 ? Math.min(mostGone, gone / all) : 0));
  return { grams: all * left, litres: Math.max(bulk, filled * left) };
};
