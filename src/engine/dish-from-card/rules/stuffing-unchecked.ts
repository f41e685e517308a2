import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { limitsFor } from "../../larder/limits.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";

const fills =
  /\bstuff(?:ed)? (?:it|the (?:\w+ )?(?:bird|chicken|turkey|duck|goose|cavity|breasts?|thighs?))\b|\b(?:spoon|pack|push|put|press)\b[^.]{0,30}\bstuffing\b[^.]{0,40}\b(?:in|into|inside|cavity|neck)\b|\bfill the (?:cavity|bird|neck)\b/i;
const body = /crumb|\bbread\b|rice|sausage|mince|couscous|oats|chestnut|bulgh?ur|potato/i;
const checked =
  /(?:middle|centre|center|core) of the stuffing|stuffing (?:itself )?(?:too )?(?:reads|reaches|is piping|comes to)/i;

/**
 * A bird that is cooked with a stuffing inside, and no word on how hot the middle of the stuffing gets: it is done later
 * than the meat. Source: FDA Food Code 3-401.11(A)(3): stuffing that holds poultry, 74 °C; USDA FSIS: 165 °F; the region's sheet.
 */
export const stuffingUnchecked: Rule = {
  code: "stuffing-unchecked",
  check: (dish, region) => {
    const bird = dish.ingredients.find(
      (i) => i.food !== null && foodById(i.food)?.hazards.includes("raw-poultry") === true,
    );
    const filled = dish.steps.find((step) => fills.test(step.text));
    if (bird === undefined || filled === undefined || checked.test(dish.text)) return [];
    if (!dish.ingredients.some((i) => body.test(i.text))) return [];
    const roast = placedActions(dish).find(
      ({ action, step }) =>
        step.index >= filled.index && action.station === "oven" && action.technique !== "preheat",
    );
    const figure = Math.max(0, ...limitsFor(region, "core", ["raw-poultry"]).map((l) => l.celsius ?? 0));
    if (roast === undefined || figure <= 0) return [];
    const end = roast.step.span.end;
    const stop = /[.!?]\s*$/.test(roast.step.text) ? "" : ".";
    return [
      makeFinding(
        "stuffing-unchecked",
        dish.source,
        roast.action.span,
        { celsius: figure },
        {
          related: [{ source: dish.source, span: filled.span }],
          fixes: [
            {
              kind: "write-temperature",
              edits: [
                {
                  span: { start: end, end },
                  text: `${stop} The middle of the stuffing should read ${figure}°C.`,
                },
              ],
            },
          ],
        },
      ),
    ];
  },
};
