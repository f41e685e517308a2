import type { Action, Step } from "../model/dish.ts";

/** Actions of a dish in the order they are written. */
export type Flat = readonly { readonly step: Step; readonly action: Action }[];

/**
 * Ties loose ends into the order of the words: what is made in the middle of a part and never named again is made for
 * what is written next, and what starts from nothing there goes on from what was written before.
 */
export const joinLoose = (flat: Flat): Flat => {
  const followed = new Set(
    flat.flatMap(({ action }) => [...action.after, ...action.uses.flatMap((use) => use.product ?? [])]),
  );
  return flat.map(({ step, action }, i) => {
    const before = flat[i - 1];
    if (!before || action.alongside || step.phase !== before.step.phase || step.part !== before.step.part) {
      return { step, action };
    }
    const loose = !followed.has(before.action.id);
    const startsFromNothing =
      action.after.length === 0 &&
      action.uses.every((use) => use.ingredient === null && use.product === null);
    if (!loose && !startsFromNothing) return { step, action };
    const after = [...new Set([...action.after, before.action.id])];
    const use = { ingredient: null, product: before.action.id, share: 1, implied: true, span: action.span };
    const takes = loose && before.action.technique !== "preheat" ? [...action.uses, use] : action.uses;
    return { step, action: { ...action, after, uses: takes as Action["uses"] } };
  });
};
