import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { actionsOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayBefore } from "./sentence-edits.ts";

/** Minutes at a boil that take care of the lectin (FSA: at least 10; the FDA's Bad Bug Book, 2nd edition, advises 30). */
const leastBoil = 10;

/**
 * Dried kidney beans that no step boils hard. Slow cooking alone makes them worse: raw, or heated below the boil, they
 * hold phytohaemagglutinin. Source: FSA; FDA Bad Bug Book, 2nd edition, 2012.
 */
export const beansNotBoiled: Rule = {
  code: "beans-not-boiled",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || !food.hazards.includes("raw-beans")) return [];
      if (
        i.container !== null ||
        /\b(?:tins?|tinned|cans?|canned|jars?|jarred|cooked|drained)\b/i.test(i.text)
      )
        return [];
      const touched = actionsOn(dish, i.index);
      const first = touched[0];
      const boiled = touched.some(
        ({ action, step }) =>
          /boil/.test(action.technique ?? action.verb) &&
          ((action.minutes !== null && action.minutes.likely >= leastBoil) ||
            /boil(?:ed|ing)? hard|fast boil|rapid/i.test(step.text)),
      );
      if (first === undefined || boiled) return [];
      const sentence = `Boil the ${i.name} hard for 30 minutes first.`;
      return [
        makeFinding(
          "beans-not-boiled",
          dish.source,
          i.span,
          { name: i.name },
          {
            related: [{ source: dish.source, span: first.action.span }],
            fixes: [{ kind: "add-caution", edits: [sayBefore(first.step, sentence)] }],
          },
        ),
      ];
    }),
};
