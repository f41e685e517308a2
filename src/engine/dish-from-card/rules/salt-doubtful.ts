import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish } from "../../model/dish.ts";
import { type AgentShare, overdosed } from "./agent-share.ts";
import { isRice } from "./keeps-badly.ts";
import { withGrams } from "./line-rewrite.ts";
import type { Rule } from "./rule.ts";
import { gramsOf, gramsWhere, isFlour, isFood } from "./whole-weights.ts";

const isSalt = (i: { readonly name: string }): boolean =>
  /^(?:(?:fine|sea|table|coarse|rock|kosher|flaky)\s+)*salt$/i.test(i.name.trim());

const salt: AgentShare = { agent: isSalt, base: () => true, usual: 0.01, most: 0.03 };
/** Baker's salt, by the flour: two per cent is usual, a tablespoon to the pound of flour too much. Common practice, no source. */
const inDough: AgentShare = { agent: isSalt, base: isFlour, usual: 0.02, most: 0.034 };
/** Cakes, biscuits and sweet doughs take a pinch, as a share of all that goes in. Common practice, no source. */
const inCake = 0.012;
/** What a guest gets with this much in a dish that is weighed throughout is a day's salt, grams. WHO guideline of 2012: 5 g a day. */
const mostEach = 5;
const evenly = 0.016;

const onPurpose =
  /\bbrin(?:e|es|ed|ing)\b|seasoning|rub\b(?! the)|\bcur(?:e|ed|ing)\b|crust|pickl|ferment|preserv|draw out|salt(?:ed|y)? water|rinse|wash|kraut|kimchi|spice mix|pasta|boil[^.]*(?:salt|water)|salt[^.]*boil/i;
const buried =
  /\bbrin(?:e|es|ed|ing)\b|\bcur(?:e|ed|ing)\b|salt crust|crust of salt|pickl|ferment|preserv|draw out|kraut|kimchi|spice mix|seasoning/i;
/** More than this is no rub, as a share of all that goes in; nor is it salted water, where that is listed. Common practice, no source. */
const evenSo = 0.08;
/** What goes into water that no line lists. Common practice, no source. */
const inWater = 0.2;
/** Salt in water that the list measures and the dish takes up. Common practice, no source. */
const takenUp = 0.04;

const isRub = /\brub\b/i;
const isSugar = isFood(/\bsugar\b/i);
const isYeast = isFood(/\byeast\b/i);

const isWater = (dish: Dish): boolean => dish.ingredients.some((i) => i.food === "water" && gramsOf(i) > 0);

/** What the dish is decides how much salt is too much. */
const shareFor = (dish: Dish): AgentShare => {
  const isTakenUp =
    isWater(dish) &&
    dish.ingredients.some(isRice) &&
    !isRub.test(dish.text) &&
    !/\bsalted water\b/i.test(dish.text);
  if (isTakenUp) return { ...salt, most: takenUp };
  if (onPurpose.test(dish.text))
    return { ...salt, most: isWater(dish) || isRub.test(dish.text) ? evenSo : inWater };
  const whole = gramsWhere(dish, () => true);
  const flour = gramsWhere(dish, isFlour);
  if (flour > 0 && dish.ingredients.some(isYeast)) return inDough;
  const isSweet = gramsWhere(dish, isSugar) > 0.15 * whole && flour > 0.15 * whole;
  if (isSweet && !/\bsalt(?:ed|y)?\b/i.test(dish.title)) return { ...salt, most: inCake };
  const guests = dish.portions?.likely ?? 0;
  const grams = gramsWhere(dish, isSalt);
  const isWeighed = dish.ingredients.every((i) => i.equipment || gramsOf(i) > 0);
  const isMuch = guests > 0 && grams / guests > mostEach && isWeighed && dish.ingredients.length > 3;
  return isMuch ? { ...salt, most: evenly } : salt;
};

/**
 * More salt than can be eaten: over 3 % of all that goes in, less in cakes, over 3.4 % of the flour in bread. About 1 %
 * is usual. Brines, cures, crusts and pickles are left alone, rubs up to 8 %, salted water up to a fifth. Common practice, no
 * source.
 */
export const saltDoubtful: Rule = {
  code: "salt-doubtful",
  check: (dish) =>
    buried.test(dish.text)
      ? []
      : overdosed(dish, shareFor(dish))
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
