import { makeFinding } from "../../findings/make-finding.ts";
import { keepsBadly } from "./keeps-badly.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

const hot =
  /\b(?:(?:straight|directly) (?:in|into|to) the (?:fridge|freezer|refrigerator)(?: (?:while|whilst|when)[^.,;]*\bhot\b)?|(?:in|into|to) the (?:fridge|refrigerator),? (?:while|whilst|when|still)[^.,;]*\bhot\b|(?:chill|refrigerate)(?: it| them)? (?:while|whilst|when) (?:still )?hot)/i;

/**
 * A hot pot of meat, rice or stock that goes into the fridge as it is: it stays warm for hours, and warms what stands
 * beside it. Source: FSA cooling advice; FDA Food Code 3-501.15 (shallow pans, small portions, iced water).
 */
export const hotInFridge: Rule = {
  code: "hot-in-fridge",
  check: (dish) => {
    if (keepsBadly(dish) === null) return [];
    return dish.steps.flatMap((step) => {
      const span = findIn(step, hot);
      // Small or shallow is quick enough.
      if (span === null || /shallow|small|iced|thin layer|once cold|cooled/i.test(step.text)) return [];
      return [
        makeFinding(
          "hot-in-fridge",
          dish.source,
          span,
          {},
          {
            fixes: [
              {
                kind: "add-caution",
                edits: [replaceWords(span, "in shallow trays to cool within 90 minutes, then in the fridge")],
              },
            ],
          },
        ),
      ];
    });
  },
};
