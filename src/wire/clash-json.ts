import type { Clash, ClashDemand, Plan } from "#engine/index.ts";
import { afterText, type ClashNames, changeText, demandText } from "#words/clash-text.ts";

/** The name of a demand in conflicts: a lag by its place and side, the rest by what limits. */
export const demandName = (demand: ClashDemand): string => {
  switch (demand.kind) {
    case "lag":
      return `lag${demand.lag}.${demand.side === "most" ? "max" : "min"}`;
    case "shift":
    case "hands":
      return `${demand.kind}.${demand.cook}`;
    case "open":
      return "open";
    case "resource":
      return `capacity.${demand.resource}`;
    case "shelves":
      return `shelves.${demand.oven}`;
    case "oven-heat":
      return "ovenSetUp";
    case "due":
      return `due${demand.course}.${demand.side === "most" ? "max" : "min"}`;
  }
};

/** Names of the demands of the first clash, lags first in the order of the problem; empty when nothing clashes. */
export const conflictNames = (plan: Plan): readonly string[] =>
  [...(plan.clashes?.[0]?.demands ?? [])].sort(byPlace).map(demandName);

const byPlace = (a: ClashDemand, b: ClashDemand): number => {
  const place = (d: ClashDemand): number =>
    d.kind === "lag" ? d.lag * 2 + (d.side === "most" ? 1 : 0) : Number.POSITIVE_INFINITY;
  return place(a) === place(b) ? 0 : place(a) - place(b);
};

/** Clashes and ways out as they go out in JSON, with their sentences. */
export const clashJson = (plan: Plan, names: ClashNames) => ({
  clashes: (plan.clashes ?? []).map((clash: Clash) => ({
    lateCourse: clash.lateCourse,
    smallest: clash.smallest,
    tasks: clash.tasks,
    demands: clash.demands.map((demand, i) => ({
      name: demandName(demand),
      ...demand,
      leastChange: clash.leastChange[i] ?? null,
      text: demandText(demand, names),
    })),
  })),
  waysOut: (plan.waysOut ?? []).map((way) => ({
    ...way,
    text: `${changeText(way.change, names)}: ${afterText(way, names)}`,
  })),
});
