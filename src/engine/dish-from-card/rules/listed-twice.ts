import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

/** The very same line twice in one part of the list. */
export const listedTwice: Rule = {
  code: "listed-twice",
  check: (dish) =>
    dish.ingredients.flatMap((i, k) => {
      const same = (text: string): string => text.toLowerCase().replace(/\s+/g, " ").trim();
      const first = dish.ingredients
        .slice(0, k)
        .find((o) => o.part === i.part && o.span.start !== i.span.start && same(o.text) === same(i.text));
      if (first === undefined || i.amounts.length === 0) return [];
      const start = dish.text.lastIndexOf("\n", i.span.start - 1);
      return [
        makeFinding(
          "listed-twice",
          dish.source,
          i.span,
          { name: i.name },
          {
            related: [{ source: dish.source, span: first.span }],
            fixes: [
              {
                kind: "remove-ingredient",
                edits: [replaceWords({ start: Math.max(0, start), end: i.span.end }, "")],
              },
            ],
          },
        ),
      ];
    }),
};
