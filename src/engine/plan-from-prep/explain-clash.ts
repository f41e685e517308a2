import { minutes, moment } from "../measure/units.ts";
import type { Cause } from "../model/plan.ts";
import { type Clash, clashAt, inTheWay } from "./clash.ts";
import { put, type Schedule, type Spot, spotOf, take } from "./schedule.ts";

/**
 * Other tasks that keep a node from a spot because hands, equipment or an oven are taken: of each thing that is too
 * full, every task without which alone there would be room; all that are there when it takes several.
 */
export const clashCauses = (schedule: Schedule, node: number, next: Spot): Cause[] => {
  const own = spotOf(schedule, node);
  if (!own) return [];
  take(schedule, node);
  const out: { readonly node: number; readonly spot: Spot }[] = [];
  const takeOut = (n: number): void => {
    const spot = spotOf(schedule, n);
    if (!spot) return;
    take(schedule, n);
    out.push({ node: n, spot });
  };
  const clashOf = (): Clash | null => clashAt(schedule, node, next.start, next.cook, next.oven);
  const causes: Cause[] = [];
  for (let clash = clashOf(); clash !== null; clash = clashOf()) {
    const there = inTheWay(schedule, clash).filter((n) => n !== node);
    if (there.length === 0) break;
    const full = clash;
    const alone = there.filter((n) => {
      const spot = spotOf(schedule, n);
      if (!spot) return false;
      take(schedule, n);
      const then = clashOf();
      put(schedule, n, spot.start, spot.cook, spot.oven);
      return then === null || keyOf(then) !== keyOf(full);
    });
    const named = alone.length > 0 ? alone : there;
    for (const n of named) causes.push(causeOf(schedule, full, n));
    for (const n of alone.length > 0 ? alone.slice(0, 1) : there) takeOut(n);
  }
  for (const { node: n, spot } of out.reverse()) put(schedule, n, spot.start, spot.cook, spot.oven);
  put(schedule, node, own.start, own.cook, own.oven);
  return causes;
};

const keyOf = (clash: Clash): string => JSON.stringify([clash.on, clash.minute]);

const causeOf = (schedule: Schedule, { on }: Clash, other: number): Cause => {
  const { model } = schedule;
  const task = model.nodes[other]?.id ?? "";
  switch (on.kind) {
    case "cook":
      return { kind: "cook", task, cook: model.cooks[on.cook] ?? "" };
    case "resource": {
      const frees = model.stays.some((stay) => stay.resource === on.resource && stay.to === other);
      const freeAt = moment(model.origin + (schedule.start[other] ?? 0) + (schedule.length[other] ?? 0));
      const resource = model.resourceIds[on.resource] ?? "";
      return { kind: "resource", task, resource, ...(frees ? { freeAt } : {}) };
    }
    case "shelf":
      return { kind: "oven", task, oven: model.ovenIds[on.oven] ?? "", changeMinutes: minutes(0) };
    case "oven":
      return { kind: "oven", task, oven: model.ovenIds[on.oven] ?? "", changeMinutes: minutes(on.change) };
  }
};
