import { type Contents, contentsOf } from "../larder/contents.ts";
import { foodById } from "../larder/foods.ts";
import { isLiquid } from "../larder/liquids.ts";
import type { Action, Dish } from "../model/dish.ts";

/** A liquid that food lies or is cooked in, out of which it is taken, and that goes into nothing else. */
export type Steeped = {
  /** The liquid and what flavours it, which keep their strength. */
  readonly lines: ReadonlySet<number>;
  readonly litres: number;
  /** What lies in it, kilos, at the card's size. */
  readonly foodKilos: number;
};

/** Litres between the pieces of a kilo of food that lies loose: two parts in five are gaps. Common practice, no source. */
const gaps = 2 / 3;
/** A small vessel wants more in step than the card's, up to this. */
const mostMore = 2;

/** What is dissolved or gives its taste. */
const flavours: ReadonlySet<string> = new Set(["spices", "herbs", "sweet"]);

const lineOf = (dish: Dish, place: number) => {
  const line = dish.ingredients[place];
  const food = line?.food == null ? null : foodById(line.food);
  return { food, grams: line?.grams?.likely ?? 0 };
};

const pours = (dish: Dish, place: number): boolean => {
  const { food } = lineOf(dish, place);
  return food !== null && isLiquid(food) && food.shelf !== "oils" && (food.density ?? 0) < 1.1;
};

const givesTaste = (dish: Dish, place: number): boolean => {
  const { food } = lineOf(dish, place);
  return food !== null && (flavours.has(food.shelf) || /(^|-)(salt|sugar|honey)(-|$)/.test(food.id));
};

const linesIn = (contents: Contents | undefined): ReadonlySet<number> =>
  new Set([...(contents?.values() ?? [])].map((c) => c.ingredient));

/** Only when what was left over is put to no other work: a syrup that is boiled down or a marinade that is stewed in is food. */
const goesOn = (
  actions: readonly Action[],
  bath: string,
  taking: Action,
  left: readonly number[],
  liquids: readonly number[],
): boolean =>
  actions.some(
    (a) =>
      a.id !== taking.id &&
      a.technique !== "serve" &&
      a.technique !== "drain" &&
      a.uses.some(
        ({ product, only }) =>
          product === bath && (only === undefined || only.some((place) => liquids.includes(place))),
      ) &&
      left.length > 0,
  );

/** The marinades, brines and poaching liquids of a card; each line stands in one at the most. */
export const steepedIn = (dish: Dish): readonly Steeped[] => {
  const actions = dish.steps.flatMap((step) => step.actions);
  const made = new Map<string, Contents>();
  for (const action of actions)
    made.set(
      action.id,
      contentsOf(action, (id) => made.get(id)),
    );
  const taken = new Set<number>();
  return actions.flatMap((action): readonly Steeped[] => {
    if (action.technique !== "drain" && action.technique !== "take-out") return [];
    return action.uses.flatMap(({ product, only }): readonly Steeped[] => {
      const inside = product === null ? new Set<number>() : linesIn(made.get(product));
      const liquids = [...inside].filter((p) => pours(dish, p) && !(only ?? []).includes(p));
      if (product === null || liquids.length === 0) return [];
      if (action.technique === "take-out" && only === undefined) return [];
      const left =
        only === undefined
          ? [...inside].filter((p) => liquids.includes(p) || givesTaste(dish, p))
          : [...inside].filter((p) => !only.includes(p));
      if (goesOn(actions, product, action, left, liquids) || left.some((p) => taken.has(p))) return [];
      const grams = (places: readonly number[]): number =>
        places.reduce((sum, p) => sum + lineOf(dish, p).grams, 0);
      const food = grams([...inside].filter((p) => !left.includes(p)));
      const litres = grams(liquids) / 1000;
      if (!(food > 0) || !(litres > 0)) return [];
      for (const p of left) taken.add(p);
      return [{ lines: new Set(left), litres, foodKilos: food / 1000 }];
    });
  });
};

/**
 * What a liquid that covers food is multiplied by beside the factor: what fills the gaps goes in step with the food, what
 * stands over it and around it with the surface of the vessel, the two-thirds power. A marinade that only coats, with
 * less than fills the gaps, goes in step. One at the card's size; more food never takes less.
 */
export const coverTimes = (litres: number, foodKilos: number, factor: number): number => {
  if (!(litres > 0) || !(factor > 0)) return 1;
  const between = Math.min(litres, gaps * foodKilos);
  const over = litres - between;
  return Math.min(mostMore, (between + over / Math.cbrt(factor)) / litres);
};
