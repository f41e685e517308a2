import { type Estimate, scaleEstimate } from "../measure/estimate.ts";
import type { Count } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Measured } from "../model/menu.ts";
import { scaleAmounts } from "./measure-ingredient.ts";

/**
 * The rest of a part is brought into step with whole eggs, leaves and tins as long as that adds no more than this; beyond
 * it they are beaten and weighed, or measured. Common practice, no source.
 */
const mostAdded = 0.05;

/** Foods that nobody has half of, and measures that are opened or laid whole. */
const wholeFoods: ReadonlySet<string> = new Set([
  "egg",
  "egg-yolk",
  "egg-white",
  "duck-egg",
  "quail-egg",
  "leaf-gelatine",
]);
const wholeMeasures: ReadonlySet<string> = new Set(["sheet", "tin", "jar", "packet", "sachet"]);

const comesWhole = ({ food, pieceName, pieces, card }: Measured): boolean => {
  if (pieces === null || card !== null) return false;
  return (food !== null && wholeFoods.has(food)) || (pieceName !== null && wholeMeasures.has(pieceName));
};

/** What was brought into step: a food by name, in how many whole pieces, and by what its part was multiplied. */
export type Rebalanced = { readonly name: string; readonly pieces: number; readonly by: number };

/**
 * Rounds pieces that come whole up to whole ones, where that is near, and multiplies the rest of their part by the same,
 * so that every ratio stays the card's. Of several such foods of a part the heaviest is taken. A card in its own size stays as it is.
 */
export const wholePieces = (
  dish: Dish,
  factor: number,
  ingredients: readonly Measured[],
): { readonly ingredients: readonly Measured[]; readonly rebalanced: readonly Rebalanced[] } => {
  if (factor === 1) return { ingredients, rebalanced: [] };
  const partOf = ({ ingredient }: Measured): string | null =>
    ingredient === null ? null : (dish.ingredients.find((i) => i.index === ingredient)?.part ?? null);
  const rebalanced: Rebalanced[] = [];
  const by = new Map<string | null, number>();
  for (const part of new Set(ingredients.map(partOf))) {
    const heaviest = ingredients
      .filter((m) => partOf(m) === part && comesWhole(m))
      .reduce<Measured | null>((a, b) => (a === null || weightOf(b) > weightOf(a) ? b : a), null);
    const pieces = heaviest?.pieces?.likely ?? 0;
    const whole = Math.ceil(pieces - 1e-9);
    if (heaviest === null || pieces <= 0 || whole <= pieces || whole / pieces > 1 + mostAdded) continue;
    by.set(part, whole / pieces);
    rebalanced.push({ name: heaviest.name, pieces: whole, by: whole / pieces });
  }
  return {
    ingredients: ingredients.map((m) => {
      const times = by.get(partOf(m));
      return times === undefined ? m : adjust(m, times);
    }),
    rebalanced,
  };
};

const weightOf = ({ edible, asPurchased }: Measured): number => edible?.likely ?? asPurchased?.likely ?? 0;

const adjust = (m: Measured, times: number): Measured => ({
  ...m,
  ...scaleAmounts(m, times),
  pieces: m.pieces === null ? null : tidy(scaleEstimate(m.pieces, times)),
  adjusted: [...m.adjusted, { reason: "whole-pieces", factor: times }],
});

/** Whole where the product of binary fractions is a hair off it. */
const tidy = (pieces: Estimate<Count>): Estimate<Count> => {
  const near = (n: Count): Count =>
    (Math.abs(n - Math.round(n)) < 1e-9 * Math.max(1, n) ? Math.round(n) : n) as Count;
  return { low: near(pieces.low), likely: near(pieces.likely), high: near(pieces.high) };
};
