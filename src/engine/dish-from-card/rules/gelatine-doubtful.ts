import { makeFinding } from "../../findings/make-finding.ts";
import { type AgentShare, overdosed } from "./agent-share.ts";
import { withGrams } from "./line-rewrite.ts";
import type { Rule } from "./rule.ts";
import { isFood } from "./whole-weights.ts";

const isGelatine = isFood(/\bgelatine?\b/i);
const gelatine: AgentShare = { agent: isGelatine, base: (i) => !isGelatine(i), usual: 0.012, most: 0.05 };

/** Gelatine over 5 % of what it sets, which gives rubber. One to two are common practice, no source. */
export const gelatineDoubtful: Rule = {
  code: "gelatine-doubtful",
  check: (dish) =>
    overdosed(dish, gelatine).map(({ line, share, grams }) =>
      makeFinding(
        "gelatine-doubtful",
        dish.source,
        line.span,
        { name: line.name, share },
        { fixes: [{ kind: "correct-amount", edits: [withGrams(line, grams)] }] },
      ),
    ),
};
