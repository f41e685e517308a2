import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { gramsOf } from "./whole-weights.ts";

/** Grams a guest of all that goes in, with what is boiled away or thrown out: more or less is hardly meant. Common practice, no source. */
const least = 15;
const most = 2000;
const leastPiece = 4;
/** What a guest gets of a dish that says nothing else, grams. Common practice, no source. */
const usual = 350;

/** The yield and the amounts do not go together: a guest would get next to nothing, or kilos. */
export const portionUnlikely: Rule = {
  code: "portion-unlikely",
  check: (dish) => {
    const made = dish.yield;
    const portions = dish.portions?.likely ?? 0;
    if (made === null || made.kind !== "portions" || portions < 1) return [];
    const known = dish.ingredients.filter((i) => !i.equipment && gramsOf(i) > 0);
    if (known.length < 2 || known.length < dish.ingredients.length * 0.7) return [];
    const each = known.reduce((sum, i) => sum + gramsOf(i), 0) / portions;
    // "Makes 40": what is made may be small.
    const small = /^makes?\b/i.test(made.words.text);
    if (each >= (small ? leastPiece : least) && each <= most) return [];
    const figure = /\d+(?:\s*[-–]\s*\d+)?/.exec(made.words.text);
    const start = made.words.span.start + (figure?.index ?? 0);
    const better = Math.max(1, Math.round((each * portions) / usual));
    return [
      makeFinding(
        "portion-unlikely",
        dish.source,
        made.words.span,
        { portions, grams: Math.round(each) },
        figure === null
          ? {}
          : {
              fixes: [
                {
                  kind: "write-yield",
                  edits: [replaceWords({ start, end: start + figure[0].length }, String(better))],
                },
              ],
            },
      ),
    ];
  },
};
