import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

/** Shorter steps ("Stir well.") may well be said twice, letters. */
const leastLength = 25;

/** The very same step twice, as pasting leaves it. */
export const stepRepeated: Rule = {
  code: "step-repeated",
  check: (dish) =>
    dish.steps.flatMap((step, k) => {
      const same = (text: string): string => text.toLowerCase().replace(/\W+/g, " ").trim();
      const own = same(step.text);
      const first =
        own.length < leastLength ? undefined : dish.steps.slice(0, k).find((s) => same(s.text) === own);
      if (first === undefined) return [];
      const start = dish.text.lastIndexOf("\n", step.span.start - 1);
      return [
        makeFinding(
          "step-repeated",
          dish.source,
          step.span,
          {},
          {
            related: [{ source: dish.source, span: first.span }],
            fixes: [
              {
                kind: "add-step",
                edits: [replaceWords({ start: Math.max(0, start), end: step.span.end }, "")],
              },
            ],
          },
        ),
      ];
    }),
};
