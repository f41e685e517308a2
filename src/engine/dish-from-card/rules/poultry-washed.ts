import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

const washing = /\b(?:wash|rinse)(?: off| well| out)?\b/i;

/** Raw poultry that is washed: it spreads Campylobacter by splashing. Source: FSA, "Don't wash raw chicken"; USDA FSIS. */
export const poultryWashed: Rule = {
  code: "poultry-washed",
  check: (dish) =>
    placedActions(dish).flatMap(({ action, step }) => {
      if (!/^(?:wash|rinse)$/.test(action.technique ?? action.verb)) return [];
      const poultry = action.uses.some((use) => {
        const food = use.ingredient === null ? null : (dish.ingredients[use.ingredient]?.food ?? null);
        return !use.implied && food !== null && (foodById(food)?.hazards.includes("raw-poultry") ?? false);
      });
      const words = findIn(step, washing);
      if (!poultry || words === null) return [];
      if (words.start < action.span.start || words.end > action.span.end) return [];
      const capital = /^[A-Z]/.test(dish.text.slice(words.start, words.end));
      return [
        makeFinding(
          "poultry-washed",
          dish.source,
          action.span,
          {},
          { fixes: [{ kind: "add-caution", edits: [replaceWords(words, capital ? "Pat dry" : "pat dry")] }] },
        ),
      ];
    }),
};
