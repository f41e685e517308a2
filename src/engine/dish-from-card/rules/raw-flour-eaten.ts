import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import { actionsOn, isBase, placedActions, toldFrom } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const inHeat =
  /\b(?:saucepan|frying pan|skillet|griddle|wok|deep fat|hot oil|bubbl\w+|thickens?|thickened|browned|golden|bake[sd]?|baking (?:tray|sheet|tin)|fry|fried|boil\w*|cook\w*)\b/i;

/** Flour that nothing heats. Flour is raw: it may carry E. coli and Salmonella. Source: FDA, "Flour is a raw food". */
export const rawFlourEaten: Rule = {
  code: "raw-flour-eaten",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || !food.hazards.includes("raw-flour") || i.optional || i.purpose !== null) return [];
      if (/heat[- ]treated|toasted|cooked|roasted/i.test(i.text) || isBase(dish)) return [];
      const touched = actionsOn(dish, i.index);
      if (touched.length === 0 || touched.some(({ action }) => heats(action.technique, action.station)))
        return [];
      // Heat on something that the words do not name may well be on this.
      if (
        placedActions(dish).some(
          ({ action }) =>
            action.technique !== "preheat" &&
            heats(action.technique, action.station) &&
            action.uses.every((u) => u.implied),
        )
      )
        return [];
      // "Put the butter in a saucepan; when it bubbles, add the flour": told as a state of the pan.
      if (touched[0] !== undefined && inHeat.test(toldFrom(dish, touched[0]))) return [];
      return [
        makeFinding(
          "raw-flour-eaten",
          dish.source,
          i.span,
          { name: i.name },
          { fixes: [{ kind: "add-caution", edits: [replaceWords(i.nameSpan, `heat-treated ${i.name}`)] }] },
        ),
      ];
    }),
};

const heats = (technique: string | null, station: string): boolean =>
  /^(?:burner|oven|grill|fryer)$/.test(station) ||
  (technique !== null && techniqueById(technique)?.kills === true);
