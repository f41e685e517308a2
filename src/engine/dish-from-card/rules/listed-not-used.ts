import { makeFinding } from "../../findings/make-finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import { nameAt } from "../steps/find-mentions.ts";
import { nameIndexOf } from "../steps/name-index.ts";
import type { Rule } from "./rule.ts";
import { stepTokens } from "./step-tokens.ts";

/** Lines of the list that the method never takes up. Optional lines and lines with a purpose of their own are left alone. */
export const listedNotUsed: Rule = {
  code: "listed-not-used",
  check: (dish) => {
    const actions = dish.steps.flatMap((s) => s.actions);
    const used = new Set(actions.flatMap((a) => a.uses.map((u) => u.ingredient)));
    // A method that takes up hardly anything was not understood; saying so of each line would help nobody.
    const taken = dish.ingredients.filter((i) => used.has(i.index)).length;
    if (taken * 2 < dish.ingredients.length) return [];
    const named = namedInMethod(dish);
    return dish.ingredients
      .filter((i) => !used.has(i.index) && !named.has(i.index) && !excused(i))
      .map((i) =>
        makeFinding(
          "listed-not-used",
          dish.source,
          i.span,
          { name: i.name },
          {
            fixes: [{ kind: "remove-ingredient", edits: [{ span: lineOf(dish.text, i), text: "" }] }],
          },
        ),
      );
  },
};

const excused = (i: Ingredient): boolean =>
  i.optional || i.equipment || i.purpose !== null || i.name.trim() === "" || isEveryday(i.food);

/** Lines whose name stands anywhere in the method, in a cue or a remark perhaps. */
const namedInMethod = (dish: Dish): ReadonlySet<number> => {
  const names = nameIndexOf(dish.ingredients);
  const found = new Set<number>();
  for (const step of dish.steps) {
    const tokens = stepTokens(step);
    for (let i = 0; i < tokens.length; i += 1) {
      const hit = nameAt(tokens, i, names);
      for (const c of hit?.candidates ?? [])
        if (c.strength >= (hit?.candidates[0]?.strength ?? 0) - 0.05) found.add(c.ingredient);
    }
  }
  return found;
};

/** The whole line with its line break, when nothing else stands on it. */
const lineOf = (text: string, i: Ingredient): { start: number; end: number } => {
  const start = text.lastIndexOf("\n", Math.max(0, i.span.start - 1)) + 1;
  const stop = text.indexOf("\n", i.span.end);
  const end = stop < 0 ? text.length : stop + 1;
  const rest = text.slice(start, i.span.start) + text.slice(i.span.end, stop < 0 ? text.length : stop);
  return /^[\s*•\-–]*$/.test(rest) ? { start, end } : i.span;
};
