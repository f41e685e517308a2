import { makeFinding } from "../../findings/make-finding.ts";
import type { Use } from "../../model/dish.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";

// Shares read from words ("a third", "two thirds") may add up to a little over one.
const tolerance = 1.05;

/** Ingredients of which the method takes more than the list holds. */
export const moreUsedThanListed: Rule = {
  code: "more-used-than-listed",
  check: (dish) => {
    const usesOf = new Map<number, Use[]>();
    for (const { action } of placedActions(dish))
      for (const use of action.uses) {
        if (use.ingredient === null) continue;
        const uses = usesOf.get(use.ingredient) ?? [];
        uses.push(use);
        usesOf.set(use.ingredient, uses);
      }
    return dish.ingredients.flatMap((i) => {
      const uses = usesOf.get(i.index) ?? [];
      const share = uses.reduce((sum, u) => sum + u.share, 0);
      const last = uses.at(-1);
      if (share <= tolerance || last === undefined) return [];
      // Words that take all of it twice name it twice; only a part that is told makes a sum.
      if (uses.every((u) => u.share === 1)) return [];
      return [
        makeFinding(
          "more-used-than-listed",
          dish.source,
          last.span,
          { name: i.name, share: Math.round(share * 100) / 100 },
          {
            related: [i.span, ...uses.slice(0, -1).map((u) => u.span)].map((span) => ({
              source: dish.source,
              span,
            })),
          },
        ),
      ];
    });
  },
};
