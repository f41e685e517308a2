import { combineFindings } from "../findings/combine.ts";
import type { Finding } from "../findings/finding.ts";
import type { Card } from "../model/card.ts";
import type { Dish } from "../model/dish.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Region } from "../model/sitting.ts";
import { readKeeping } from "./keeping/read-keeping.ts";
import { readIngredients } from "./lines/read-ingredients.ts";
import { checkRules } from "./rules/check-rules.ts";
import { readSteps } from "./steps/read-steps.ts";
import { readSwaps } from "./swaps/read-swaps.ts";
import { chooseYield, doubtfulYields, portionsOf, readYield } from "./yield/read-yield.ts";

/** Reads a card: its yield, foods, amounts, actions, swaps and keeping. Never throws. */
export const dishFromCard = (card: Card, region: Region): Outcome<Dish, Finding> => {
  const made = chooseYield(card.yields.flatMap((words) => readYield(words, region) ?? []));
  const { ingredients, findings: aboutLines } = readIngredients(card, region);
  const { steps, findings: aboutSteps } = readSteps(card, ingredients, region);
  const { swaps, findings: aboutSwaps } = readSwaps(card, ingredients, region);
  const { keeping, findings: aboutKeeping } = readKeeping(card, steps);
  const dish: Dish = {
    source: card.source,
    text: card.text,
    title: card.title?.text ?? card.source,
    titleSpan: card.title?.span ?? { start: 0, end: 0 },
    portions: portionsOf(made),
    yield: made,
    ingredients,
    steps,
    swaps,
    keeping,
  };
  return {
    value: dish,
    findings: combineFindings(
      doubtfulYields(card),
      aboutLines,
      aboutSteps,
      aboutSwaps,
      aboutKeeping,
      checkRules(dish, region),
    ),
  };
};
