import type { Placed } from "../model/plan.ts";
import type { Prep, TaskId } from "../model/prep.ts";

type Stay = {
  readonly task: TaskId | null;
  readonly from: number;
  readonly to: number;
  readonly amount: number;
};

/** Tasks that fill a vessel when none is clean, and when one is. */
export const overVessels = (
  prep: Prep,
  placed: ReadonlyMap<TaskId, Placed>,
): readonly { readonly task: TaskId; readonly until: number }[] => {
  const byResource = new Map<string, Stay[]>();
  for (const stay of prep.stays ?? []) {
    const first = stay.from === null ? null : placed.get(stay.from);
    if (first === undefined) continue;
    const last = stay.to === null ? null : placed.get(stay.to);
    const own = byResource.get(stay.resource) ?? [];
    byResource.set(stay.resource, own);
    own.push({
      task: stay.from,
      from: first?.start ?? Number.NEGATIVE_INFINITY,
      to: last === null ? Number.POSITIVE_INFINITY : (last?.end ?? first?.end ?? Number.NEGATIVE_INFINITY),
      amount: stay.amount,
    });
  }
  const found: { task: TaskId; until: number }[] = [];
  for (const [resource, stays] of byResource) {
    const there = prep.resources.find((r) => r.id === resource)?.capacity ?? 0;
    for (const stay of stays) {
      if (stay.task === null) continue;
      const others = stays.filter((o) => o !== stay && o.from <= stay.from && stay.from < o.to);
      const sum = others.reduce((total, o) => total + o.amount, stay.amount);
      if (sum <= there + 1e-6) continue;
      const until = Math.min(...others.map((o) => o.to));
      if (Number.isFinite(until)) found.push({ task: stay.task, until });
    }
  }
  return found;
};
