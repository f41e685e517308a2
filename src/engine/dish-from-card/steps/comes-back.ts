import type { Clause } from "./clauses.ts";
import { newestPool, type Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import { pans } from "./word-sets.ts";

/** "Return the chicken to the pan", "put the meat back": what was set aside comes back to the pot. */
export const comesBack = (clause: Clause): boolean =>
  clause.hit !== null &&
  (/^return\b/.test(clause.hit.verb) ||
    (/^(put|add|tip|slide|pop|place|stir|throw|bring|go|lay|pour)\b/.test(clause.hit.verb) &&
      clause.tokens.some((t, i) => i > clause.verbAt && t.text === "back" && i < clause.verbAt + 9)));

/** The pot that what was set aside comes back to. */
export const potFor = (
  reader: StepReader,
  clause: Clause,
  named: readonly Pool[],
  part: string | null,
): Pool | null => {
  const { kitchen } = reader;
  const free = (p: Pool | null): p is Pool => p !== null && !named.includes(p) && !p.aside;
  if (kitchen.emptied !== null && kitchen.emptied.waits.size > 0 && !named.includes(kitchen.emptied))
    return kitchen.emptied;
  // The pot on the fire, before one that something else was lifted from.
  if (free(kitchen.current) && kitchen.current.onHeat && !kitchen.current.raw) return kitchen.current;
  const lifted = newestPool(kitchen, (p) => p.partial && free(p) && p.waits.size > 0);
  if (lifted !== null) return lifted;
  if (free(kitchen.current) && !kitchen.current.raw) return kitchen.current;
  const fits = (p: Pool): boolean =>
    free(p) && !p.raw && (part === null || p.part === part || p.part === null);
  return (
    newestPool(kitchen, (p) => fits(p) && p.vessel !== null && pans.has(p.vessel)) ??
    (clause.tokens.some((t) => pans.has(t.stem)) ? newestPool(kitchen, fits) : null)
  );
};
