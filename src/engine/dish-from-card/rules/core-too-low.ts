import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { coreHold, limitsFor } from "../../larder/limits.ts";
import { celsius } from "../../measure/units.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import type { HazardKind } from "../../model/food.ts";
import { actionsOn, type Placed, placedActions } from "./dish-graph.ts";
import { isReadyMeat, rawAnimal } from "./keeps-badly.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";
import { toldCore } from "./told-core.ts";

const hazards: readonly HazardKind[] = ["raw-poultry", "raw-mince", "liver"];

/** Below this, no hold at all is in the tables, and food is warmed rather than cooked, °C. */
const degree = 1;

/**
 * A stated core for poultry, mince or liver below the least that the region's sheet prints, with no hold that makes up
 * for it; for a joint of pork, one below all that the region's book has a hold for. Source: the rows of data/limits.csv; local codes decide.
 */
export const coreTooLow: Rule = {
  code: "core-too-low",
  check: (dish, region) =>
    dish.ingredients.flatMap((i) => {
      const hazard = hazardOf(i);
      if (hazard === null) return [];
      const rows = limitsFor(region, "core", [hazard]);
      const figure = Math.max(0, ...rows.map((limit) => limit.celsius ?? 0));
      const core = lastCore(dish, i);
      const stated = core === undefined ? null : toldCore(core);
      if (core === undefined || stated === null || figure <= 0 || stated >= figure - degree) return [];
      // A joint of pork is served at less than mince is; only below every row of the book it is too low.
      if (hazard === "raw-meat" && coreHold(region, hazard, celsius(stated)) !== null) return [];
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

/** What the food is held to: as poultry, mince or liver, or as a joint of pork; null for all else. */
const hazardOf = (i: Ingredient): HazardKind | null => {
  const food = i.food === null ? null : foodById(i.food);
  if (food === null) return null;
  const own = hazards.find((h) => food.hazards.includes(h));
  if (own !== undefined) return own;
  const isPork =
    food.hazards.includes("raw-meat") && food.diet.includes("pork") && (!isReadyMeat(i) || isGammon(i));
  return isPork ? "raw-meat" : null;
};

/** The last core that is stated for it; where it is the only meat or fish of the card, any that something cooks to. */
const lastCore = (dish: Dish, i: Ingredient): Placed | undefined => {
  const own = actionsOn(dish, i.index).findLast((p) => toldCore(p) !== null);
  if (own !== undefined || rawAnimal(dish).some((other) => other !== i)) return own;
  return placedActions(dish).findLast(
    (p) => /^(?:burner|oven|grill|fryer)$/.test(p.action.station) && toldCore(p) !== null,
  );
};

/** Gammon is cured, and raw. */
const isGammon = (i: Ingredient): boolean => /\bgammon\b/i.test(i.text) && !/\bcooked\b/i.test(i.text);
