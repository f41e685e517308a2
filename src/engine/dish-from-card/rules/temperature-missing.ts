import { makeFinding } from "../../findings/make-finding.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const unset = new Set([
  "keep-warm",
  "warm-plates",
  "stand",
  "cool",
  "rest",
  "prove",
  "microwave",
  "air-fry",
  "sterilise",
]);

// Cooks roast and bake on the stove too; and some settings are words.
const onStove =
  /\b(?:frying|skillet|waffle|wok|stove|hob|spatula|gas|toaster|griddle|in (?:the |some )?(?:butter|oil)|in (?:a|the) pan|on the pan|oven[- ](?:safe|proof)|medium (?:heat|temperature)|lower medium|until translucent)\b/i;
const set =
  /\b(?:max(?:imum)?|full|high(?:est)?|low(?:est)?|medium|same) (?:heat|temperature|setting|degree)\b|\b(?:hot|moderate|slow|low|warm) oven\b|as per/i;

/** What is offered, for the cook to correct: a moderate oven, °C. Common practice, no source. */
const moderate = 180;

/** An oven that the card never gives a setting; said once, at the first baking. */
export const temperatureMissing: Rule = {
  code: "temperature-missing",
  check: (dish) => {
    const oven = placedActions(dish).filter(
      ({ action, step }) =>
        action.station === "oven" &&
        !unset.has(action.technique ?? "") &&
        (/\boven\b(?![- ](?:safe|proof))/i.test(step.text) || !onStove.test(step.text)) &&
        !set.test(step.text),
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
