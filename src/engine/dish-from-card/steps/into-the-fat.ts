import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import { namesSomething } from "./pool-words.ts";
import { newestPool, type Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import { burners, gotReady } from "./word-sets.ts";

/** "Heat the oil. Fry in batches": the hot fat, and what was got ready and goes in; null where neither is meant. */
export const intoTheFat = (
  { kitchen }: StepReader,
  clause: Clause,
  chosen: Chosen,
  current: Pool | null,
  pronoun: boolean,
): readonly Pool[] | null => {
  const { id } = chosen.technique;
  const other = (p: Pool): boolean => p !== current && p.contents.size > 0 && !p.primed && !p.onHeat;
  const wasGotReady = (p: Pool): boolean => other(p) && gotReady.some((t) => p.did.has(t));
  // "Get the oil hot and fry them": no fat is fried alone, so the pronoun means what was got ready.
  const waits = current?.primed === true && (!pronoun || current.contents.size > 0);
  if (waits && /^(fry|deep-fry|stir-fry)$/.test(id)) {
    const prepared = newestPool(kitchen, (p) => wasGotReady(p) && (!pronoun || p.raw));
    if (prepared !== null) return [current, prepared];
  }
  // "Heat the fat and brown the bird", "griddle the koftas": a word for what was got ready, into the hot pan.
  if (burners.has(chosen.station) && current?.primed === true && namesSomething(clause)) {
    const prepared = newestPool(kitchen, wasGotReady) ?? newestPool(kitchen, other);
    if (prepared !== null) return [current, prepared];
  }
  // "Heat the oil. Dip the fish in batter. Fry for 3 minutes": into the fat that waits.
  if (/^(fry|deep-fry|stir-fry|brown|sear)$/.test(id) && current !== null && !current.onHeat) {
    const fat = newestPool(kitchen, (p) => p !== current && p.primed && p.contents.size > 0);
    if (fat !== null) return [fat, current];
  }
  return null;
};
