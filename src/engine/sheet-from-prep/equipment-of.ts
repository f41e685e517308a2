import { type CardTins, tinsOf } from "../heat/card-tins.ts";
import { tinsTaken } from "../heat/tins-taken.ts";
import type { OwnVessel } from "../larder/own-vessels.ts";
import { count } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { VesselUse } from "../model/menu.ts";
import type { SheetEquipment, SheetStep } from "../model/sheet.ts";
import type { Kitchen } from "../model/sitting.ts";
import { vesselsHere } from "./counts-of.ts";

/**
 * What the dish needs of the kitchen at once, at the most: pans, trays and containers by the fillings of one action, and
 * the stations it uses; and the tins and moulds that the card counts. Where the kitchen has fewer, the work goes in turns.
 */
export const equipmentOf = (
  dish: Dish,
  steps: readonly SheetStep[],
  own: readonly OwnVessel[],
  factor: number,
  kitchen: Kitchen,
): readonly SheetEquipment[] => {
  const needs = new Map<string, SheetEquipment>();
  const need = (
    kind: SheetEquipment["kind"],
    name: string,
    many: number,
    has: number | null,
    insteadOf?: string,
  ): void => {
    const key = `${kind} ${name}`;
    const known = needs.get(key);
    if (known === undefined || known.count < many)
      needs.set(key, {
        kind,
        name,
        count: count(many),
        has: has === null ? null : count(has),
        ...(insteadOf === undefined ? {} : { insteadOf }),
      });
  };
  const needTins = (tins: CardTins): void => {
    const { here, same, tins: many } = tinsTaken(tins, factor, kitchen);
    if (here === null) need(same ? "own" : "tin", tins.name, many, same ? null : 0);
    else need("tin", here.name, many, here.count, same ? undefined : tins.name);
  };
  for (const { vessels } of steps)
    for (const { kind, name, fillings } of vessels) need(kind, name, fillings, hasOf(kind, name, kitchen));
  const tins = tinsOf(dish);
  if (tins !== null) needTins(tins);
  for (const vessel of own)
    if (vessel.noun !== "tray" && (tins === null || vessel.noun !== "tin"))
      need("own", vessel.name, vesselsHere(vessel, factor), null);
  const inPans = new Set(
    steps.flatMap(({ vessels }) => vessels.flatMap((v) => (v.kind === "pan" ? v.action : []))),
  );
  for (const { id, station } of dish.steps.flatMap((step) => step.actions)) {
    if (station === "oven") need("oven", "", 1, kitchen.ovens.length);
    if (station === "burner") need("burner", "", 1, kitchen.burners);
    if (station === "grill") need("grill", "", 1, kitchen.grills);
    // A pan of fat does for a fryer.
    if (station === "fryer" && !(kitchen.fryers < 1 && inPans.has(id))) need("fryer", "", 1, kitchen.fryers);
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
