import type { Action } from "../../model/dish.ts";
import type { Clause } from "./clauses.ts";
import { laidOver, namesSomething } from "./pool-words.ts";
import { latestPool, newestPool, type Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";
import { carriers } from "./word-sets.ts";

type Place = { readonly part: string | null; readonly sentence: string; readonly before: Action | null };

type Near = {
  readonly fresh: readonly Fresh[];
  readonly named: readonly { readonly pool: Pool | null; readonly from: number }[];
  readonly current: Pool | null;
  readonly vesselPool: Pool | null;
  readonly pronoun: boolean;
  /** The words ask for a vessel of its own. */
  readonly vessel: boolean;
  readonly ready: readonly Pool[];
};

/** The pools of an action that brings something to what is already there; the one it goes into comes first. */
export const joinedPools = (
  reader: StepReader,
  clause: Clause,
  id: string,
  place: Place,
  { fresh, named, current, vesselPool, pronoun, vessel, ready }: Near,
): readonly (Pool | null)[] => {
  const { kitchen } = reader;
  const base = named.map((n) => n.pool);
  if (vessel && fresh.length > 0 && !pronoun) return base;
  if (clause.meanwhile && fresh.length > 0) return base;
  if (
    kitchen.emptied !== null &&
    fresh.length > 0 &&
    named.length === 0 &&
    !pronoun &&
    kitchen.emptied.part === place.part
  )
    return [kitchen.emptied];
  // "Melt the butter and lay the fillets in it": words for what was got ready and lies beside the hot pan.
  const beside =
    current?.primed === true && fresh.length === 0 && named.length === 0 && namesSomething(clause)
      ? newestPool(kitchen, (p) => p !== current && p.raw && p.contents.size > 0)
      : null;
  if (beside !== null) return [current, beside];
  const pot =
    current?.raw === true
      ? (newestPool(kitchen, (p) => !p.raw && (place.part === null || p.part === place.part)) ?? current)
      : current;
  // "Dip in the batter", "dress": it is done to what is in hand, and not to the pot.
  const toPot = carriers.has(id) || fresh.length > 0 || named.length > 0;
  const unnamed = fresh.length === 0 && named.length === 0;
  const carried = unnamed && (current?.raw === true || (vesselPool !== null && vesselPool !== current));
  const laid = unnamed ? laidOver(reader, clause, place.before, place.sentence) : null;
  if (laid !== null) return [laid, current, ...ready];
  // "Toast the almonds and stir them in": into what stood there before this sentence.
  const madeNow =
    fresh.length === 0 &&
    place.before !== null &&
    current !== null &&
    current.sentence === place.sentence &&
    /^(add|fold)$/.test(id) &&
    (pronoun || named.length > 0) &&
    named.every((n) => n.pool === current);
  const before = madeNow
    ? latestPool(
        kitchen,
        (p) => p !== current && p.sentence !== place.sentence && p.contents.size > 0 && !p.primed && !p.aside,
      )
    : null;
  if (before !== null) return [before, current, ...ready];
  if (ready.length > 1) return [vesselPool ?? pot, ...base, ...ready];
  return [vesselPool ?? (toPot ? pot : current), ...base, carried ? current : null];
};
