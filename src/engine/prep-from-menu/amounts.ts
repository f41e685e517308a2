import type { Content } from "../heat/composition.ts";
import type { Contents } from "../larder/contents.ts";
import type { Portioned } from "./work.ts";

/** Grams of a line of the card in one version; what a swap brings in is spread over the lines it takes out. */
export const lineGrams = (version: Portioned, ingredient: number, out: ReadonlySet<number>): number => {
  const own = version.ingredients.filter((m) => m.ingredient === ingredient);
  if (own.length > 0) return own.reduce((sum, m) => sum + (m.edible?.likely ?? 0), 0);
  if (!out.has(ingredient)) return 0;
  const came = version.ingredients.filter((m) => m.ingredient === null);
  return came.reduce((sum, m) => sum + (m.edible?.likely ?? 0), 0) / Math.max(1, out.size);
};

/** Grams of contents in one version: never more of a line than the line has; water driven off is not taken away. */
export const contentsGrams = (contents: Contents, version: Portioned, out: ReadonlySet<number>): number => {
  const shares = new Map<number, number>();
  for (const { ingredient, share } of contents.values()) {
    shares.set(ingredient, Math.min(1, (shares.get(ingredient) ?? 0) + share));
  }
  let sum = 0;
  for (const [ingredient, share] of shares) sum += share * lineGrams(version, ingredient, out);
  return sum;
};

/** The foods of contents in one version; what a swap brings in stands for the lines it takes out. */
export const contentsFoods = (
  contents: Contents,
  version: Portioned,
  out: ReadonlySet<number>,
): readonly Content[] => {
  const shares = new Map<number, number>();
  for (const { ingredient, share } of contents.values()) {
    shares.set(ingredient, Math.min(1, (shares.get(ingredient) ?? 0) + share));
  }
  return [...shares].flatMap(([ingredient, share]) => {
    const own = version.ingredients.filter((m) => m.ingredient === ingredient);
    if (own.length > 0) return own.map((m) => ({ food: m.food, grams: share * (m.edible?.likely ?? 0) }));
    if (!out.has(ingredient)) return [];
    const came = version.ingredients.filter((m) => m.ingredient === null);
    return came.map((m) => ({
      food: m.food,
      grams: (share * (m.edible?.likely ?? 0)) / Math.max(1, out.size),
    }));
  });
};
