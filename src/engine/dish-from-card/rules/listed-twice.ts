import { makeFinding } from "../../findings/make-finding.ts";
import type { Ingredient } from "../../model/dish.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

/** The very same line twice in one part of the list. */
export const listedTwice: Rule = {
  code: "listed-twice",
  check: (dish) => {
    const before = new Map<string, Ingredient>();
    return dish.ingredients.flatMap((i) => {
      if (i.amounts.length === 0) return [];
      const own = `${i.part ?? ""}|${i.text.toLowerCase().replace(/\s+/g, " ").trim()}`;
      const first = before.get(own);
      if (first === undefined || first.span.start === i.span.start) {
        before.set(own, i);
        return [];
      }
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
    });
  },
};
