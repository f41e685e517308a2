import { count, minutes, moment } from "../../measure/units.ts";
import type { ClashDemand } from "../../model/clash.ts";
import type { Prep } from "../../model/prep.ts";
import type { Model } from "../model.ts";
import type { Group } from "./encode-groups.ts";

/** A group of the solver as a demand in the words of the prep. */
export const demandOf = (
  prep: Prep,
  model: Model,
  mostLate: readonly (number | null)[],
  group: Group,
): ClashDemand => {
  switch (group.kind) {
    case "lag": {
      const lag = prep.lags[group.lag];
      const side = group.most ? "most" : "least";
      return {
        kind: "lag",
        lag: group.lag,
        side,
        before: lag?.before ?? "",
        after: lag?.after ?? "",
        minutes: minutes(lag?.[side] ?? 0),
        reason: lag?.reason ?? "method-order",
      };
    }
    case "shift":
    case "hands":
      return { kind: group.kind, cook: model.cooks[group.cook] ?? "" };
    case "open":
      return { kind: "open" };
    case "heat":
      return { kind: "oven-heat" };
    case "resource":
      return {
        kind: "resource",
        resource: model.resourceIds[group.resource] ?? "",
        capacity: model.capacity.resources[group.resource] ?? 0,
      };
    case "shelves":
      return {
        kind: "shelves",
        oven: model.ovenIds[group.oven] ?? "",
        shelves: count(model.capacity.shelves[group.oven] ?? 0),
      };
    case "due": {
      const late = group.most ? (mostLate[group.goal] ?? 0) : 0;
      return {
        kind: "due",
        course: model.goals[group.goal]?.course ?? 0,
        side: group.most ? "most" : "least",
        at: moment((model.due[group.goal] ?? 0) + model.origin + late),
      };
    }
  }
};
