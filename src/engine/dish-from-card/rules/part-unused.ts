import { makeFinding } from "../../findings/make-finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import { foodById } from "../../larder/foods.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";

/** Less than this of a line left over is rounding, a share. Common practice, no source. */
const leastLeft = 0.1;
const most = 1 - leastLeft;
/** Words that take up a rest without naming it, or say why there is one. */
const restTold =
  /\b(?:rest|remain\w*|remaining|left ?over|extra|spare|more|again|the other|another|if (?:needed|necessary|you)|as needed|enough|garnish|decorat\w*|to serve|to taste|reserv\w*|keep back|save|set aside|repeat|each|batch\w*)\b/i;

/** The method takes a part of a line, and nothing says what becomes of the rest: "200 ml of the cream" of 400 listed. */
export const partUnused: Rule = {
  code: "part-unused",
  check: (dish) => {
    if (restTold.test(dish.steps.map((s) => s.text).join("\n"))) return [];
    const all = placedActions(dish).flatMap(({ action }) => action.uses);
    return dish.ingredients.flatMap((i) => {
      const alwaysLeft = isEveryday(i.food) || (i.food !== null && foodById(i.food)?.shelf === "eggs");
      if (
        alwaysLeft ||
        i.optional ||
        i.purpose !== null ||
        i.gramsBasis === "vague" ||
        /\bplus\b|\bextra\b/i.test(i.text)
      )
        return [];
      const uses = all.filter((u) => u.ingredient === i.index);
      const share = uses.reduce((sum, u) => sum + u.share, 0);
      const last = uses.at(-1);
      if (last === undefined || share <= 0 || share > most || uses.some((u) => u.implied)) return [];
      return [
        makeFinding(
          "part-unused",
          dish.source,
          last.span,
          { name: i.name, share: Math.round(share * 100) / 100 },
          { related: [{ source: dish.source, span: i.span }] },
        ),
      ];
    });
  },
};
