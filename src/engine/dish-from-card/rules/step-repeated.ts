import { makeFinding } from "../../findings/make-finding.ts";
import type { Step } from "../../model/dish.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

/** Shorter steps ("Stir well.") may well be said twice, letters. */
const leastLength = 25;

/** The very same step twice, as pasting leaves it. */
export const stepRepeated: Rule = {
  code: "step-repeated",
  check: (dish) => {
    const first = new Map<string, Step>();
    return dish.steps.flatMap((step) => {
      if (step.text.length < leastLength) return [];
      const own = step.text.toLowerCase().replace(/\W+/g, " ").trim();
      const before = first.get(own);
      if (before === undefined) {
        first.set(own, step);
        return [];
      }
      const start = dish.text.lastIndexOf("\n", step.span.start - 1);
      return [
        makeFinding(
          "step-repeated",
          dish.source,
          step.span,
          {},
          {
            related: [{ source: dish.source, span: before.span }],
            fixes: [
              {
                kind: "add-step",
                edits: [replaceWords({ start: Math.max(0, start), end: step.span.end }, "")],
              },
            ],
          },
        ),
      ];
    });
  },
};
