import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Action, Step } from "../model/dish.ts";
import { nowAndThen, nowAndThenTechniques } from "./kitchen-rates.ts";

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
  return stirredWaits(flat).map(({ step, action }, i, all) => {
    const before = all[i - 1];
    if (!before || action.alongside || step.phase !== before.step.phase || step.part !== before.step.part) {
      return { step, action };
    }
    const loose = !followed.has(before.action.id);
    // A roast that is rested and sliced is done: it waits for the plates, and is no part of the gravy told next.
    const begins = action.uses.length > 0 && action.uses.every((use) => use.ingredient !== null);
    if (loose && begins && step.index !== before.step.index && isDone(before.action, all)) {
      return { step, action };
    }
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

/** What ends a thing that was cooked. */
const ends = new Set(["rest", "slice", "carve", "cool", "cut"]);
const cooks = new Set(["oven", "burner", "grill", "fryer"]);

/** True when an action ends a line of work in which something was cooked. */
const isDone = (last: Action, all: Flat): boolean => {
  if (!ends.has(last.technique ?? "")) return false;
  const byId = new Map(all.map(({ action }) => [action.id, action]));
  const stack = [...last.after];
  const seen = new Set<string>();
  while (stack.length > 0) {
    const id = stack.pop() ?? "";
    const action = byId.get(id);
    if (!action || seen.has(id)) continue;
    if (cooks.has(action.station) && action.technique !== "preheat") return true;
    seen.add(id);
    stack.push(...action.after);
  }
  return false;
};

/** "Stand it in iced water and stir now and then for an hour" is one hour, not the usual stand and then an hour. */
const stirredWaits = (flat: Flat): Flat =>
  flat.map(({ step, action }, i) => {
    const next = flat[i + 1]?.action;
    const stirred =
      next !== undefined &&
      nowAndThenTechniques.has(next.technique ?? "") &&
      (next.minutes?.likely ?? 0) > nowAndThen &&
      next.after.includes(action.id);
    if (!stirred || action.attention === "hands" || action.minutes?.assumed === false)
      return { step, action };
    return { step, action: { ...action, minutes: { ...exactly(minutes(setDown)), assumed: false } } };
  });

/** Minutes to set a pot where it is to stand. */
const setDown = 2;
