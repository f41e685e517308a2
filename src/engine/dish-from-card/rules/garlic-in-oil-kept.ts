import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { gramsWhere, isFood } from "./whole-weights.ts";

/** Days that garlic or herbs in oil are kept in the fridge at most. Source: USDA FSIS and CDC on botulism: four days. */
const mostDays = 4;
const long =
  /\b(?:(\d+|two|three|four|five|six|several|a few)\s+(weeks?|months?)|a (?:week|month)|(\d+)\s+days?|indefinitely)\b/i;

/**
 * Garlic or herbs under oil that are to be kept for longer than a few days, or not in the fridge: without air and acid,
 * Clostridium botulinum can grow. Source: CDC, "Home-canned foods"; USDA FSIS. Vinegar or lemon in it is taken as acid.
 */
export const garlicInOilKept: Rule = {
  code: "garlic-in-oil-kept",
  check: (dish) => {
    const oil = gramsWhere(dish, isFood(/\boil\b/i));
    const all = gramsWhere(dish, () => true);
    const risky = dish.ingredients.some(isFood(/\bgarlic\b|\bbasil\b|\bchilli\b|\brosemary\b|\bthyme\b/i));
    const acid = dish.ingredients.some(isFood(/vinegar|lemon|lime|citric/i));
    if (!risky || acid || all <= 0 || oil / all < 0.5) return [];
    return dish.keeping.flatMap((keeping) => {
      const found = long.exec(keeping.text);
      if (found === null || (found[3] !== undefined && Number(found[3]) <= mostDays)) return [];
      const start = keeping.span.start + found.index;
      const span = { start, end: start + found[0].length };
      return [
        makeFinding(
          "garlic-in-oil-kept",
          dish.source,
          span,
          { days: mostDays },
          { fixes: [{ kind: "add-caution", edits: [replaceWords(span, `${mostDays} days`)] }] },
        ),
      ];
    });
  },
};
