import type { Kitchen } from "../model/sitting.ts";
import { type Draft, segmentsOf, totalMinutes } from "./drafts.ts";
import type { Limit } from "./limits.ts";

/** Times the ovens are filled for a draft; 1 when all its trays go in at once. */
export const turnsOf = (draft: Draft, kitchen: Kitchen): number => {
  const shelves = kitchen.ovens.reduce((sum, oven) => sum + oven.shelves, 0);
  const all = draft.loads.reduce((sum, load) => sum + load, 0);
  return draft.loads.length > 1 ? Math.ceil(all / Math.max(1, shelves)) : 1;
};

/** Loads that go into the oven one after the other cannot all be fresh from it, or all go in at once. */
export const inTurns = (limit: Limit, before: Draft, after: Draft, kitchen: Kitchen): Limit => {
  const extra = (draft: Draft): number =>
    (turnsOf(draft, kitchen) - 1) * (totalMinutes(segmentsOf(draft)) + 10);
  return { ...limit, most: limit.most + extra(before) + extra(after) };
};
