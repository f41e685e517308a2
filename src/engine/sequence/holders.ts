import type { Prep } from "../model/prep.ts";
import type { Stage } from "./stage.ts";

/** `to` takes over, `lag` minutes after its end, what `from` held: the hands of a cook, or a place. */
type Handover = { readonly from: number; readonly to: number; readonly lag: number; readonly hands?: true };

/** A part of a resource, and the stage that held it last; -1 when nobody has yet. */
type Part = { readonly amount: number; readonly free: number; readonly last: number };

/**
 * Who must wait for whom because both use the same hands, oven, burner, fridge, machine or vessel. Each capacity is taken as
 * parts that are handed on in the order of the plan; of the parts that are free, the one that was free latest is taken,
 * so that as few stages as can be hang on each other.
 */
export const holders = (prep: Prep, stages: readonly Stage[]): readonly Handover[] => {
  const handovers: Handover[] = [];
  const pools = new Map<string, Part[]>();
  const take = (
    pool: string,
    capacity: number,
    amount: number,
    k: number,
    stage: Stage,
    hands?: true,
  ): void => {
    const parts = pools.get(pool) ?? [{ amount: capacity, free: Number.NEGATIVE_INFINITY, last: -1 }];
    pools.set(pool, parts);
    let wanted = amount;
    const free = parts
      .filter((part) => part.free <= stage.planned)
      .sort((a, b) => b.free - a.free || b.last - a.last);
    for (const part of free) {
      if (wanted <= 1e-9) break;
      const taken = Math.min(wanted, part.amount);
      wanted -= taken;
      parts.splice(parts.indexOf(part), 1);
      if (part.amount - taken > 1e-9) parts.push({ ...part, amount: part.amount - taken });
      parts.push({ amount: taken, free: stage.plannedEnd, last: k });
      if (part.last >= 0 && part.last !== k)
        handovers.push({ from: part.last, to: k, lag: 0, ...(hands ? { hands } : {}) });
    }
  };
  const ovens = new Map(prep.ovens.map((oven) => [oven.id, oven.shelves as number]));
  const resources = new Map(prep.resources.map((resource) => [resource.id, resource.capacity]));
  const { capacity, hands, mind } = prep.attention;
  const baked = new Map<string, { readonly k: number; readonly celsius: number }[]>();
  for (const [k, stage] of stages.entries()) {
    const { attention, uses } = stage.segment;
    if (stage.cook !== null && attention !== "none")
      take(`cook ${stage.cook}`, capacity, attention === "hands" ? hands : mind, k, stage, true);
    for (const use of uses) {
      const oven = use.resource === "oven" || ovens.has(use.resource) ? stage.oven : null;
      if (oven === null) {
        take(`resource ${use.resource}`, resources.get(use.resource) ?? 0, use.amount, k, stage);
        continue;
      }
      take(`oven ${oven}`, ovens.get(oven) ?? 0, use.amount, k, stage);
      const celsius = use.celsius ?? 0;
      const earlier = baked.get(oven) ?? [];
      baked.set(oven, earlier);
      for (const other of earlier) {
        const apart = Math.abs(other.celsius - celsius);
        if (apart <= prep.kitchen.ovenTolerance || stages[other.k]?.task === stage.task) continue;
        const change = Math.ceil((apart / 10) * prep.kitchen.ovenMinutesPer10C);
        handovers.push({ from: other.k, to: k, lag: change });
      }
      earlier.push({ k, celsius });
    }
  }
  return [...handovers, ...vesselHolders(prep, stages)];
};

/**
 * Who must wait for whom because both want the same pan, tray or tin: it is handed on when the food has been moved and
 * it is washed up, whatever lies between.
 */
const vesselHolders = (prep: Prep, stages: readonly Stage[]): readonly Handover[] => {
  const span = new Map<string, { first: number; last: number }>();
  stages.forEach(({ task }, k) => {
    const known = span.get(task.id);
    if (known === undefined) span.set(task.id, { first: k, last: k });
    else known.last = k;
  });
  const resources = new Map(prep.resources.map((resource) => [resource.id, resource.capacity]));
  const handovers: Handover[] = [];
  const pools = new Map<string, Part[]>();
  const standing = (prep.stays ?? [])
    .flatMap((stay) => {
      const from = stay.from === null ? undefined : span.get(stay.from)?.first;
      const last = stay.to === null ? undefined : span.get(stay.to)?.last;
      const planned = from === undefined ? undefined : stages[from]?.planned;
      // A pan that is in use from the beginning waits for nobody.
      if (planned === undefined && stay.from !== null) return [];
      const free = last === undefined ? Number.POSITIVE_INFINITY : (stages[last]?.plannedEnd ?? 0);
      return [
        { stay, from: from ?? -1, last: last ?? -1, planned: planned ?? Number.NEGATIVE_INFINITY, free },
      ];
    })
    .sort((a, b) => a.planned - b.planned || a.from - b.from);
  for (const { stay, from, last, planned, free } of standing) {
    const capacity = resources.get(stay.resource) ?? 0;
    const parts = pools.get(stay.resource) ?? [
      { amount: capacity, free: Number.NEGATIVE_INFINITY, last: -1 },
    ];
    pools.set(stay.resource, parts);
    let wanted = stay.amount;
    const able = parts
      .filter((part) => part.free <= planned)
      .sort((a, b) => b.free - a.free || b.last - a.last);
    for (const part of able) {
      if (wanted <= 1e-9) break;
      const taken = Math.min(wanted, part.amount);
      wanted -= taken;
      parts.splice(parts.indexOf(part), 1);
      if (part.amount - taken > 1e-9) parts.push({ ...part, amount: part.amount - taken });
      parts.push({ amount: taken, free, last });
      if (part.last >= 0 && from >= 0 && part.last < from)
        handovers.push({ from: part.last, to: from, lag: 0 });
    }
  }
  return handovers;
};
