import { potSurface, simmerLoss } from "../heat/evaporation.ts";
import { foodById } from "../larder/foods.ts";
import { leftBehind } from "../larder/left-behind.ts";
import { isPlainLiquid } from "../larder/liquids.ts";
import type { Action, Dish, Step } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { loadsOf } from "./vessel-loads.ts";

/** Techniques at a simmer over time, whose end is that of the food and not of the liquid; a reduction takes longer instead. */
const simmers: ReadonlySet<string> = new Set(["simmer", "boil", "stew", "braise", "cook", "make-stock"]);
/** Never more of the water and stock on the card than this is taken to boil away. */
const mostGone = 0.5;
/** A pan is worked nearly to the brim. Common practice, no source. */
const workingFill = 0.85;
/** How far a small pot may lose more in step than the card's. */
const mostOften = 3;

const covered = (step: Step): boolean =>
  /\b(cover|covered|lid)\b/i.test(step.text) &&
  !/uncover|without a lid|lid off|half.cover|partly cover/i.test(step.text);

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

/** Ids of the actions that hold one of these lines, directly or in what was made before. */
const holding = (dish: Dish, lines: readonly number[]): ReadonlySet<string> => {
  const held = new Set<string>();
  for (const step of dish.steps)
    for (const { id, uses } of step.actions) {
      const holds = uses.some((use) =>
        use.ingredient !== null
          ? lines.includes(use.ingredient)
          : use.product !== null && held.has(use.product),
      );
      if (holds) held.add(id);
    }
  return held;
};

/** Null when a card simmers no water or stock that reaches the plate. */
export const boiledAway = (dish: Dish): BoiledAway | null => {
  const lines = plainLines(dish);
  const liquid = lines.reduce((sum, i) => sum + (dish.ingredients[i]?.grams?.likely ?? 0), 0);
  if (!(liquid > 0)) return null;
  const held = holding(dish, lines);
  const loads = loadsOf(dish);
  let gone = 0;
  let litres = 0;
  for (const step of dish.steps)
    for (const action of step.actions) {
      if (!held.has(action.id) || !simmering(action)) continue;
      const pot = loads.get(action.id)?.litres ?? 0;
      gone += simmerLoss(potSurface(pot), covered(step)).likely * (action.minutes?.likely ?? 0);
      litres = Math.max(litres, pot);
    }
  return gone > 0 ? { share: Math.min(mostGone, gone / liquid), litres, lines } : null;
};

const simmering = ({ technique, station }: Action): boolean =>
  simmers.has(technique ?? "") && (station === "burner" || station === "oven");

/**
 * What water and stock are multiplied by beside the factor: each portion keeps its liquid when what boils away is counted
 * by the surface, which grows with the two-thirds power of what stands in a pot, and with the pots. One at the card's size.
 */
export const liquidTimes = ({ share, litres }: BoiledAway, factor: number, kitchen: Kitchen): number => {
  const largest = kitchen.pans.reduce((most, pan) => Math.max(most, pan.litres), 0) * workingFill;
  const pots = (l: number): number => (largest > 0 ? Math.max(1, Math.ceil(l / largest - 1e-9)) : 1);
  const often = Math.cbrt(pots(litres * factor) / pots(litres) / factor);
  return 1 - share + share * Math.min(mostOften, often);
};
