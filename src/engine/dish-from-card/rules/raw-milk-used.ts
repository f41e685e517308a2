import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const raw = /\b(?:raw|unpasteuri[sz]ed)(?=\s+(?:\S+\s+)?(?:milk|cream|buttermilk))/i;

/** Raw milk or cream on the list. Who may be served it depends on the place and the guest; local codes decide. Source: FSA; FDA. */
export const rawMilkUsed: Rule = {
  code: "raw-milk-used",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const found = raw.exec(dish.text.slice(i.span.start, i.span.end));
      if (found === null) return [];
      const start = i.span.start + found.index;
      const span = { start, end: start + found[0].length };
      return [
        makeFinding(
          "raw-milk-used",
          dish.source,
          span,
          { name: i.name },
          { fixes: [{ kind: "add-caution", edits: [replaceWords(span, "pasteurised")] }] },
        ),
      ];
    }),
};
