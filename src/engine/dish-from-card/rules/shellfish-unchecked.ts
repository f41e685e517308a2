import { makeFinding } from "../../findings/make-finding.ts";
import { actionsOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayAfter } from "./sentence-edits.ts";

const alive = /\b(?:mussels?|clams?|cockles?)\b/i;
const bought = /\b(?:tins?|tinned|cans?|canned|jars?|smoked|cooked|frozen|shelled|meat|picked|brined?)\b/i;

/**
 * Mussels, clams or cockles in the shell with no word on the dead ones: those that stay open before, or shut after, are
 * thrown away. Source: FSA; FDA, "Selecting and serving fresh and frozen seafood".
 */
export const shellfishUnchecked: Rule = {
  code: "shellfish-unchecked",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      if (!alive.test(i.name) || bought.test(i.text)) return [];
      if (/discard|throw|shut|clos|tap|open/i.test(dish.steps.map((s) => s.text).join(" "))) return [];
      const last = actionsOn(dish, i.index).findLast(({ action }) =>
        /^(?:burner|oven|grill)$/.test(action.station),
      );
      if (last === undefined) return [];
      return [
        makeFinding(
          "shellfish-unchecked",
          dish.source,
          last.action.span,
          { name: i.name },
          {
            related: [{ source: dish.source, span: i.span }],
            fixes: [{ kind: "add-caution", edits: [sayAfter(last.step, "Throw away any that stay shut.")] }],
          },
        ),
      ];
    }),
};
