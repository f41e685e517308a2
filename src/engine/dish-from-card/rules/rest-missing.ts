import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { actionsOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayAfter } from "./sentence-edits.ts";
import { gramsOf } from "./whole-weights.ts";

/** A piece from here on is carved, and loses its juice when that is done at once, grams. Common practice, no source. */
const joint = 900;

/** A roast joint or bird that is carved without a rest. Fifteen to thirty minutes are common practice, no source. */
export const restMissing: Rule = {
  code: "rest-missing",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || !/^(?:meat|poultry)$/.test(food.shelf) || gramsOf(i) < joint) return [];
      if (i.preparation.some((p) => /dice|cube|chop|slice|mince|joint|cut/.test(p))) return [];
      if ((i.amounts.find((a) => a.unit === "piece")?.likely ?? 1) > 2) return [];
      const touched = actionsOn(dish, i.index);
      const roast = touched.findLastIndex(({ action }) => action.technique === "roast");
      const carve = touched.findIndex(
        ({ action }, k) => k > roast && /^(?:carve|slice)$/.test(action.technique ?? action.verb),
      );
      const roasted = touched[roast];
      if (roasted === undefined || carve < 0) return [];
      const rests = touched
        .slice(roast, carve + 1)
        .some(
          ({ action, step }) => action.technique === "rest" || /\brest|stand|settle|relax/i.test(step.text),
        );
      if (rests) return [];
      return [
        makeFinding(
          "rest-missing",
          dish.source,
          roasted.action.span,
          { name: i.name },
          { fixes: [{ kind: "add-step", edits: [sayAfter(roasted.step, "Rest it for 20 minutes.")] }] },
        ),
      ];
    }),
};
