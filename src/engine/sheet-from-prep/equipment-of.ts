import { count } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { VesselUse } from "../model/menu.ts";
import type { SheetEquipment, SheetStep } from "../model/sheet.ts";
import type { Kitchen } from "../model/sitting.ts";

/**
 * What the dish needs of the kitchen at once, at the most: pans, trays and containers by the fillings of one action, and
 * the stations it uses. Where the kitchen has fewer, the work goes in turns.
 */
export const equipmentOf = (
  dish: Dish,
  steps: readonly SheetStep[],
  kitchen: Kitchen,
): readonly SheetEquipment[] => {
  const needs = new Map<string, SheetEquipment>();
  const need = (kind: SheetEquipment["kind"], name: string, many: number, has: number): void => {
    const key = `${kind} ${name}`;
    const known = needs.get(key);
    if (known === undefined || known.count < many)
      needs.set(key, { kind, name, count: count(many), has: count(has) });
  };
  for (const { vessels } of steps)
    for (const { kind, name, fillings } of vessels) need(kind, name, fillings, hasOf(kind, name, kitchen));
  for (const { station } of dish.steps.flatMap((step) => step.actions)) {
    if (station === "oven") need("oven", "", 1, kitchen.ovens.length);
    if (station === "burner") need("burner", "", 1, kitchen.burners);
    if (station === "grill") need("grill", "", 1, kitchen.grills);
    if (station === "fryer") need("fryer", "", 1, kitchen.fryers);
  }
  return [...needs.values()];
};

const hasOf = (kind: VesselUse["kind"], name: string, kitchen: Kitchen): number => {
  switch (kind) {
    case "pan":
      return kitchen.pans.filter((pan) => pan.name === name).reduce((sum, pan) => sum + pan.count, 0);
    case "container":
      return kitchen.containers.filter((c) => c.size === name).reduce((sum, c) => sum + c.count, 0);
    case "tray":
      return kitchen.trays;
  }
};
