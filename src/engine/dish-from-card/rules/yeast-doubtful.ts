import { makeFinding } from "../../findings/make-finding.ts";
import { type AgentShare, overdosed } from "./agent-share.ts";
import { withGrams } from "./line-rewrite.ts";
import type { Rule } from "./rule.ts";
import { isFlour, isFood } from "./whole-weights.ts";

const isYeast = isFood(/\byeast\b/i);
const isFresh = (text: string): boolean => /\b(?:fresh|cake|compressed)\b/i.test(text);

const yeasts: readonly AgentShare[] = [
  { agent: (i) => isYeast(i) && !isFresh(i.text), base: isFlour, usual: 0.012, most: 0.05 },
  { agent: (i) => isYeast(i) && isFresh(i.text), base: isFlour, usual: 0.03, most: 0.12 },
];

/** Dried yeast over 5 % or fresh over 12 % of the flour. One to two, and two to five, are common practice, no source. */
export const yeastDoubtful: Rule = {
  code: "yeast-doubtful",
  check: (dish) =>
    yeasts
      .flatMap((yeast) => overdosed(dish, yeast))
      .map(({ line, share, grams }) =>
        makeFinding(
          "yeast-doubtful",
          dish.source,
          line.span,
          { name: line.name, share },
          { fixes: [{ kind: "correct-amount", edits: [withGrams(line, grams)] }] },
        ),
      ),
};
