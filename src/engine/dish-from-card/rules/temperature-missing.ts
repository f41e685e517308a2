import { makeFinding } from "../../findings/make-finding.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const unset = new Set(["keep-warm", "warm-plates", "stand", "cool", "rest", "prove", "microwave", "air-fry"]);

/** What is offered, for the cook to correct: a moderate oven, °C. Common practice, no source. */
const moderate = 180;

/** An oven that the card never gives a setting; said once, at the first baking. */
export const temperatureMissing: Rule = {
  code: "temperature-missing",
  check: (dish) => {
    const oven = placedActions(dish).filter(
      ({ action }) => action.station === "oven" && !unset.has(action.technique ?? ""),
    );
    if (oven.some(({ action }) => action.celsius !== null)) return [];
    const baking = oven.filter(({ action }) => action.technique !== "preheat");
    const first = baking[0] ?? oven[0];
    if (first === undefined) return [];
    const end = first.action.span.end;
    return [
      makeFinding(
        "temperature-missing",
        dish.source,
        first.action.span,
        { verb: first.action.verb },
        {
          fixes: [
            { kind: "write-temperature", edits: [replaceWords({ start: end, end }, ` at ${moderate}°C`)] },
          ],
        },
      ),
    ];
  },
};
