import type { Finding } from "../../findings/finding.ts";
import type { Card } from "../../model/card.ts";
import type { Keeping, Step } from "../../model/dish.ts";

/** Reads the "keeping" lines of a card. Never throws. */
export const readKeeping = (
  _card: Card,
  _steps: readonly Step[],
): { readonly keeping: readonly Keeping[]; readonly findings: readonly Finding[] } => ({
  keeping: [],
  findings: [],
});
