import { makeFinding } from "../../findings/make-finding.ts";
import { isCookedThrough } from "../../larder/cooked-through.ts";
import { foodById } from "../../larder/foods.ts";
import { actionsOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const pasteurised = /pasteuri[sz]ed/i;

/**
 * Egg, yolk or white that no step cooks through. Eggs carry Salmonella; who may be served them raw depends on the eggs
 * and the guests, and local codes decide. Source: FSA advice of 11 October 2017 on Lion eggs; FDA Food Code 3-401.11.
 */
export const rawEgg: Rule = {
  code: "raw-egg",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || !food.hazards.includes("raw-egg") || i.optional) return [];
      const touched = actionsOn(dish, i.index);
      const first = touched[0];
      if (first === undefined || pasteurised.test(i.text) || isCookedThrough(dish, i.index)) return [];
      return [
        makeFinding(
          "raw-egg",
          dish.source,
          i.span,
          { name: i.name },
          {
            related: [{ source: dish.source, span: first.action.span }],
            fixes: [
              {
                kind: "add-caution",
                edits: [replaceWords({ start: i.nameSpan.start, end: i.nameSpan.start }, "pasteurised ")],
              },
            ],
          },
        ),
      ];
    }),
};
