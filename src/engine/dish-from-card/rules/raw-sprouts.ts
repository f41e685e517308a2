import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { actionsOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayBefore } from "./sentence-edits.ts";

/** Seed sprouts that nothing heats: they may carry Salmonella and E. coli. Source: FDA Food Code 3-801.11(C); FSA. */
export const rawSprouts: Rule = {
  code: "raw-sprouts",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || !food.hazards.includes("sprouts") || /\b(?:tin|jar|cooked|blanched)/i.test(i.text))
        return [];
      const touched = actionsOn(dish, i.index);
      const first = touched[0];
      const heated = touched.some(({ action }) => /^(?:burner|oven|grill|fryer)$/.test(action.station));
      if (first === undefined || heated) return [];
      return [
        makeFinding(
          "raw-sprouts",
          dish.source,
          i.span,
          { name: i.name },
          {
            fixes: [
              {
                kind: "add-caution",
                edits: [sayBefore(first.step, `Steam the ${i.name} for 3 minutes and let them cool.`)],
              },
            ],
          },
        ),
      ];
    }),
};
