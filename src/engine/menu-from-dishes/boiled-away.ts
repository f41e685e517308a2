import { foodById } from "../larder/foods.ts";
import { leftBehind } from "../larder/left-behind.ts";
import { isPlainLiquid } from "../larder/liquids.ts";
import type { Dish } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { isSimmer, loadsOf, simmeredAway } from "./vessel-loads.ts";

/** Never more of the water and stock on the card than this is taken to boil away. */
const mostGone = 0.5;
/** A pan is worked nearly to the brim. Common practice, no source. */
const workingFill = 0.85;
/** How far a small pot may lose more in step than the card's. */
const mostOften = 3;

/** What the water and stock of a card lose to the air, and in how large a pot. */
export type BoiledAway = {
  /** Share of the water and stock on the card that boils away there. */
  readonly share: number;
  /** Litres of the fullest pot that simmers, for the card's own size. */
  readonly litres: number;
  /** The lines that are water or stock. */
  readonly lines: readonly number[];
};

const plainLines = (dish: Dish): readonly number[] =>
  dish.ingredients.flatMap((line) => {
    const food = line.food === null ? null : foodById(line.food);
    const used = dish.steps.some((s) =>
      s.actions.some((a) => a.uses.some((u) => u.ingredient === line.index)),
    );
    const plain = food !== null && isPlainLiquid(food) && (line.grams?.likely ?? 0) > 0;
    return plain && used && leftBehind(dish, line.index) === "none" ? [line.index] : [];
  });

/** Null when a card simmers no water or stock that reaches the plate. */
export const boiledAway = (dish: Dish): BoiledAway | null => {
  const lines = plainLines(dish);
  const liquid = lines.reduce((sum, i) => sum + (dish.ingredients[i]?.grams?.likely ?? 0), 0);
  if (!(liquid > 0)) return null;
  const loads = loadsOf(dish);
  let gone = 0;
  let litres = 0;
  for (const step of dish.steps)
    for (const action of step.actions) {
      const pot = loads.get(action.id);
      const holds = pot !== undefined && [...pot.contents.values()].some((c) => lines.includes(c.ingredient));
      if (!holds || !isSimmer(action)) continue;
      gone += simmeredAway(action, step, pot.litres, 1);
      litres = Math.max(litres, pot.litres);
    }
  return gone > 0 ? { share: Math.min(mostGone, gone / liquid), litres, lines } : null;
};

/** Pots that so many litres make in a kitchen, each worked nearly to the brim; one where no pans are known. */
export const potsOf = (kitchen: Kitchen): ((litres: number) => number) => {
  const largest = kitchen.pans.reduce((most, pan) => Math.max(most, pan.litres), 0) * workingFill;
  return (litres) => (largest > 0 ? Math.max(1, Math.ceil(litres / largest - 1e-9)) : 1);
};

/**
 * What water and stock are multiplied by beside the factor: each portion keeps its liquid when what boils away is counted
 * by the surface, which grows with the two-thirds power of what stands in a pot, and with the pots. One at the card's size.
 * So what is left after boiling is in step with the portions, and starch and salt, which are a share of it, with it.
 */
export const liquidTimes = ({ share, litres }: BoiledAway, factor: number, kitchen: Kitchen): number => {
  const pots = potsOf(kitchen);
  const often = Math.cbrt(pots(litres * factor) / pots(litres) / factor);
  return 1 - share + share * Math.min(mostOften, often);
};
