import type { Content } from "../heat/composition.ts";
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

/** What stands in a vessel: each time a line went in, by the action that took it, with the share of the line. */
export type Contents = ReadonlyMap<string, { readonly ingredient: number; readonly share: number }>;

/**
 * What an action has in its hands, earlier products included. Words that take a whole product twice ("lift out the
 * thighs", "put the thighs back") take the same stuff back, so nothing counts beyond what first went in.
 */
export const contentsOf = (action: Action, product: (action: string) => Contents | undefined): Contents => {
  const all = new Map<string, { readonly ingredient: number; readonly share: number }>();
  action.uses.forEach((use, u) => {
    if (use.ingredient !== null) {
      all.set(`${action.id}#${u}`, { ingredient: use.ingredient, share: use.share });
      return;
    }
    for (const [key, part] of (use.product === null ? undefined : product(use.product)) ?? []) {
      if (use.only !== undefined && !use.only.includes(part.ingredient)) continue;
      const most = part.share;
      const share = Math.min(most, (all.get(key)?.share ?? 0) + use.share * most);
      all.set(key, { ...part, share });
    }
  });
  return all;
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
