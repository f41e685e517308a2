import type { Action } from "../../model/dish.ts";
import type { Clause } from "./clauses.ts";
import { isTool } from "./find-details.ts";
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

/** "Tip the tarka in": a noun behind the verb that is no vessel. */
const namesUnknown = (clause: Clause): boolean => {
  const noun = clause.tokens[clause.verbAt + 2];
  return (
    clause.tokens[clause.verbAt + 1]?.text === "the" &&
    noun?.kind === "word" &&
    !isTool(noun.text) &&
    !/^(heat|rest|lot|top|whole|others?|remainder)$/.test(noun.text)
  );
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
  // "Stir the barley": where it stands, beside what is in hand.
  if (
    id === "stir" &&
    named.length > 0 &&
    fresh.length === 0 &&
    !pronoun &&
    !clause.tokens.some((t) => /^(in|into|through|together|with|over|back)$/.test(t.text))
  )
    return base;
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
  // "Beat your egg and put that in as well": into the bowl before it.
  const bowl =
    fresh.length === 0 &&
    named.length === 0 &&
    pronoun &&
    current?.contents.size === 1 &&
    clause.tokens.some((t, i) => t.text === "in" && /^(as|too|with|)$/.test(clause.tokens[i + 1]?.text ?? ""))
      ? latestPool(kitchen, (p) => p !== current && p.contents.size > 1 && !p.primed && !p.aside)
      : null;
  if (bowl !== null) return [bowl, current];
  // "Tip the tarka in", by a word that names no line and nothing made: what was cooked beside it.
  const tipped =
    unnamed && current !== null && !pronoun && namesUnknown(clause) && /^(add|pour|put)$/.test(id)
      ? latestPool(kitchen, (p) => p !== current && p.onHeat && p.contents.size > 1 && !p.primed && !p.aside)
      : null;
  if (tipped !== null && clause.tokens.some((t) => /^(in|over)$/.test(t.text))) return [current, tipped];
  if (ready.length > 1) return [vesselPool ?? pot, ...base, ...ready];
  return [vesselPool ?? (toPot ? pot : current), ...base, carried ? current : null];
};
