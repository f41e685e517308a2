import { makeFinding } from "../../findings/make-finding.ts";
import { type AgentShare, overdosed } from "./agent-share.ts";
import { withGrams } from "./line-rewrite.ts";
import type { Rule } from "./rule.ts";
import { isFlour, isFood } from "./whole-weights.ts";

const agents: readonly AgentShare[] = [
  { agent: isFood(/\bbaking powder\b/i), base: isFlour, usual: 0.04, most: 0.09 },
  { agent: isFood(/\b(?:bicarbonate|baking soda)\b/i), base: isFlour, usual: 0.01, most: 0.03 },
];

/**
 * Baking powder over 9 % or bicarbonate over 3 % of the flour, which tastes of soap. Three to five, and about one, are
 * common practice, no source.
 */
export const raisingAgentDoubtful: Rule = {
  code: "raising-agent-doubtful",
  check: (dish) =>
    agents
      .flatMap((agent) => overdosed(dish, agent))
      .map(({ line, share, grams }) =>
        makeFinding(
          "raising-agent-doubtful",
          dish.source,
          line.span,
          { name: line.name, share },
          { fixes: [{ kind: "correct-amount", edits: [withGrams(line, grams)] }] },
        ),
      ),
};
