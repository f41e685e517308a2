import type { Action } from "../model/dish.ts";
import type { Portioned } from "./work.ts";

/** Grams of a line of the card in one version; what a swap brings in is spread over the lines it takes out. */
export const lineGrams = (version: Portioned, ingredient: number, out: ReadonlySet<number>): number => {
  const own = version.ingredients.filter((m) => m.ingredient === ingredient);
  if (own.length > 0) return own.reduce((sum, m) => sum + (m.edible?.likely ?? 0), 0);
  if (!out.has(ingredient)) return 0;
  const came = version.ingredients.filter((m) => m.ingredient === null);
  return came.reduce((sum, m) => sum + (m.edible?.likely ?? 0), 0) / Math.max(1, out.size);
};

/** Grams in an action's hands, earlier products included; water driven off on the way is not taken away. */
export const actionGrams = (
  action: Action,
  version: Portioned,
  out: ReadonlySet<number>,
  product: (action: string) => number,
): number =>
  action.uses.reduce((sum, use) => {
    if (use.ingredient !== null) return sum + use.share * lineGrams(version, use.ingredient, out);
    return sum + (use.product === null ? 0 : use.share * product(use.product));
  }, 0);
