import type { Finding } from "../../findings/finding.ts";
import type { Card } from "../../model/card.ts";
import type { Ingredient, Step } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";

/** Reads the method and the "to serve" lines of a card into steps of actions. Never throws. */
export const readSteps = (
  card: Card,
  _ingredients: readonly Ingredient[],
  _region: Region,
): { readonly steps: readonly Step[]; readonly findings: readonly Finding[] } => {
  const steps: Step[] = [];
  for (const block of card.blocks) {
    if (block.role !== "method" && block.role !== "to-serve") continue;
    for (const line of block.lines)
      steps.push({
        index: steps.length,
        text: line.text,
        span: line.span,
        part: block.part,
        phase: block.role,
        actions: [],
      });
  }
  return { steps, findings: [] };
};
