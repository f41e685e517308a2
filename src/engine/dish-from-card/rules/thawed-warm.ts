import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

const warm =
  /\b(?:at room temperature|on the (?:counter|side|worktop|bench|table)|in (?:a )?(?:warm|hot) (?:water|place|room)|in the sun)\b/i;

/**
 * Frozen food that is thawed in the warm, where its outside is soon above 5 °C. Source: FDA Food Code 3-501.13 (in the
 * fridge, under cold running water, or as part of cooking); FSA. Bread and pastry may.
 */
export const thawedWarm: Rule = {
  code: "thawed-warm",
  check: (dish) =>
    dish.steps.flatMap((step) => {
      if (
        !/\b(?:thaw|defrost)/i.test(step.text) ||
        /pastry|dough|bread|berries|berry|peas|fruit/i.test(step.text)
      )
        return [];
      const span = findIn(step, warm);
      if (span === null) return [];
      return [
        makeFinding(
          "thawed-warm",
          dish.source,
          span,
          {},
          { fixes: [{ kind: "add-caution", edits: [replaceWords(span, "in the fridge overnight")] }] },
        ),
      ];
    }),
};
