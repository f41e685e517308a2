import { makeFinding } from "../../findings/make-finding.ts";
import { type AgentShare, overdosed } from "./agent-share.ts";
import { withGrams } from "./line-rewrite.ts";
import type { Rule } from "./rule.ts";

const salt: AgentShare = {
  agent: (i) => /^(?:(?:fine|sea|table|coarse|rock|kosher|flaky)\s+)*salt$/i.test(i.name.trim()),
  base: () => true,
  usual: 0.01,
  most: 0.03,
};
const onPurpose =
  /brin|seasoning|rub\b(?! the)|cur(?:e|ing)\b|crust|pickl|ferment|preserv|draw out|salt(?:ed|y)? water|rinse|wash|kraut|kimchi|spice mix|pasta|boil[^.]*(?:salt|water)|salt[^.]*boil/i;
const buried =
  /brin|cur(?:e|ing)\b|salt crust|crust of salt|pickl|ferment|preserv|draw out|kraut|kimchi|spice mix|seasoning/i;
/** More than this is no rub and no water for pasta either, as a share of all that goes in. Common practice, no source. */
const evenSo = 0.2;

/**
 * More salt than can be eaten: over 3 % of all that goes in. About 1 % is usual. Brines, cures, crusts, pickles and salted
 * water are left alone. Common practice, no source.
 */
export const saltDoubtful: Rule = {
  code: "salt-doubtful",
  check: (dish) =>
    buried.test(dish.text)
      ? []
      : overdosed(dish, onPurpose.test(dish.text) ? { ...salt, most: evenSo } : salt)
          // What no figure stands with was put in by a usual one; a lone dry thing is a seasoning.
          .filter(({ line }) => line.gramsBasis !== "vague" && line.amounts.length > 0)
          .map(({ line, share, grams }) =>
            makeFinding(
              "salt-doubtful",
              dish.source,
              line.span,
              { name: line.name, share },
              { fixes: [{ kind: "correct-amount", edits: [withGrams(line, grams)] }] },
            ),
          ),
};
