import type { Clash, Plan } from "#engine/index.ts";
import { afterText, type ClashNames, changeText, demandText } from "#words/clash-text.ts";

/** Clashes and ways out as they go out in JSON, with their sentences. */
export const clashJson = (plan: Plan, names: ClashNames) => ({
  clashes: (plan.clashes ?? []).map((clash: Clash) => ({
    lateCourse: clash.lateCourse,
    smallest: clash.smallest,
    tasks: clash.tasks,
    demands: clash.demands.map((demand, i) => ({
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
