import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { coreHold, limitsFor } from "../../larder/limits.ts";
import { celsius } from "../../measure/units.ts";
import type { HazardKind } from "../../model/food.ts";
import { actionsOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

const hazards: readonly HazardKind[] = ["raw-poultry", "raw-mince", "liver"];

/** Below this, no hold at all is in the tables, and food is warmed rather than cooked, °C. */
const degree = 1;

/**
 * A stated core for poultry, mince or liver below the least that the region's sheet prints, with no hold that makes up
 * for it. Source: the rows of data/limits.csv; local codes decide.
 */
export const coreTooLow: Rule = {
  code: "core-too-low",
  check: (dish, region) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      const hazard = hazards.find((h) => food?.hazards.includes(h));
      if (hazard === undefined) return [];
      const rows = limitsFor(region, "core", [hazard]);
      const figure = Math.max(0, ...rows.map((limit) => limit.celsius ?? 0));
      const core = actionsOn(dish, i.index).findLast(({ action }) => action.core !== null);
      const stated = core?.action.core ?? null;
      if (core === undefined || stated === null || figure <= 0 || stated >= figure - degree) return [];
      // A longer hold at a lower figure is another way to the same end, when the words give it.
      const hold = coreHold(region, hazard, celsius(stated));
      const minutes = /(\d+)\s*(?:min|minutes)\b/i.exec(
        core.step.text.slice(core.step.text.search(/hold|keep it|for at least/i)),
      );
      if (
        hold !== null &&
        minutes !== null &&
        Number(minutes[1]) >= hold &&
        /hold|keep it|for at least/i.test(core.step.text)
      )
        return [];
      const inFahrenheit = Math.round((stated * 9) / 5 + 32);
      const shown = findIn(
        core.step,
        new RegExp(`\\b${Math.round(stated)}(?=\\s*°?\\s*C\\b)|\\b${inFahrenheit}(?=\\s*°?\\s*F\\b)`),
      );
      const text =
        shown !== null && dish.text.slice(shown.start, shown.end) === String(inFahrenheit)
          ? String(Math.round((figure * 9) / 5 + 32))
          : String(figure);
      return [
        makeFinding(
          "core-too-low",
          dish.source,
          core.action.span,
          { name: i.name, celsius: Math.round(stated), needed: figure },
          shown === null
            ? {}
            : { fixes: [{ kind: "write-temperature", edits: [replaceWords(shown, text)] }] },
        ),
      ];
    }),
};
