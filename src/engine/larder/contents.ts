import type { Action } from "../model/dish.ts";

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
