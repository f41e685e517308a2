import type { Prep } from "../model/prep.ts";
import type { Stay } from "./model.ts";

/**
 * Stays as numbers. What there are enough of for everything at once can never be in the way, and is left out, so that a
 * kitchen with pans to spare is planned as fast as one of which none is told.
 */
export const compileStays = (prep: Prep, index: ReadonlyMap<string, number>): readonly Stay[] => {
  const all = (prep.stays ?? []).flatMap((stay): Stay[] => {
    const resource = prep.resources.findIndex(({ id }) => id === stay.resource);
    const from = stay.from === null ? -1 : index.get(stay.from);
    const to = stay.to === null ? -1 : (index.get(stay.to) ?? -1);
    return resource < 0 || from === undefined ? [] : [{ resource, amount: stay.amount, from, to }];
  });
  if (all.length === 0) return all;
  const inSegments = new Set(
    prep.tasks.flatMap((t) => t.segments.flatMap((s) => s.uses.map((u) => u.resource))),
  );
  const scarce = prep.resources.map(({ id, capacity }, r) => {
    const asked = all.reduce((sum, stay) => sum + (stay.resource === r ? stay.amount : 0), 0);
    return asked > capacity + 1e-6 || inSegments.has(id);
  });
  return together(all.filter((stay) => scarce[stay.resource]));
};

/** Vessels of a kind that are taken and freed by the same tasks are one stay. */
const together = (stays: readonly Stay[]): readonly Stay[] => {
  const found = new Map<string, Stay>();
  for (const stay of stays) {
    const key = `${stay.resource} ${stay.from} ${stay.to}`;
    found.set(key, { ...stay, amount: stay.amount + (found.get(key)?.amount ?? 0) });
  }
  return [...found.values()];
};
