import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish } from "../../model/dish.ts";
import { type AgentShare, overdosed } from "./agent-share.ts";
import { withGrams } from "./line-rewrite.ts";
import type { Rule } from "./rule.ts";
import { gramsWhere, isFood } from "./whole-weights.ts";

/** What stands in for flour counts with it: "meal" of any grain, oats, ground nuts, crumbs, starch, mixes. */
const isMeal = isFood(
  /\b(?:flours?|\w*meal|oats?|polenta|semolina|bran|ground \w+|starch|cornflour|crumbs?|mix|cocoa)\b/i,
);

/** Less than this share of flour is no dough or batter, and the agent has other work (to sharpen, to soften). Common practice, no source. */
const leastMeal = 0.1;

const isKnown = (dish: Dish): boolean =>
  !dish.ingredients.some((i) => isMeal(i) && (i.grams === null || i.gramsBasis === "vague"));

/** Flour of a known weight that makes a dough or a batter. */
const isDough = (dish: Dish): boolean =>
  isKnown(dish) && gramsWhere(dish, isMeal) >= leastMeal * gramsWhere(dish, () => true);

const isSelfRaising = isFood(/self[- ]rais|self[- ]rising/i);
/** Flour that holds baking powder already takes no more than this of it. Common practice, no source. */
const mostInSelfRaising = 0.055;

/** Whatever else goes in, no batter takes a part of baking powder to three of flour. Common practice, no source. */
const neverMore = 0.3;

const agents: readonly AgentShare[] = [
  { agent: isFood(/\bbaking powder\b/i), base: isMeal, usual: 0.04, most: 0.09 },
  { agent: isFood(/\b(?:bicarbonate|baking soda)\b/i), base: isMeal, usual: 0.01, most: 0.045 },
];

/**
 * Baking powder over 9 % or bicarbonate over 4.5 % of the flour, which tastes of soap. Three to five, and about one, are
 * common practice, no source.
 */
export const raisingAgentDoubtful: Rule = {
  code: "raising-agent-doubtful",
  check: (dish) =>
    agents
      .flatMap((agent) => {
        const raised = agent.most > 0.05 && dish.ingredients.filter(isMeal).every(isSelfRaising);
        if (!isDough(dish))
          return agent.most > 0.05 && isKnown(dish) ? overdosed(dish, { ...agent, most: neverMore }) : [];
        return overdosed(dish, raised ? { ...agent, most: mostInSelfRaising } : agent);
      })
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
