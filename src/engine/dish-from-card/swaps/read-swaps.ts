import type { Finding } from "../../findings/finding.ts";
import type { Card } from "../../model/card.ts";
import type { Ingredient, Swap } from "../../model/dish.ts";

/** Reads the "swaps" lines of a card. Never throws. */
export const readSwaps = (
  card: Card,
  _ingredients: readonly Ingredient[],
): { readonly swaps: readonly Swap[]; readonly findings: readonly Finding[] } => ({
  swaps: card.blocks
    .filter((b) => b.role === "swaps")
    .flatMap((b) => b.lines.map((l) => ({ text: l.text, span: l.span, needs: [], out: [], comes: [] }))),
  findings: [],
});
