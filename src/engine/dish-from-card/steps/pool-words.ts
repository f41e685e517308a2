import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import { isTool } from "./find-details.ts";
import { newestPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";
import { pronouns, vessels } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** A pronoun of a clause means what is in hand. */
export const hasPronoun = (clause: Clause, fresh: readonly Fresh[]): boolean =>
  // "The onions go in, let them soften": the pronoun means what was just named.
  !fresh.some((f) => f.from < clause.verbAt) && hasBarePronoun(clause);

const pointers = new Set("this that these those".split(" "));

const hasBarePronoun = (clause: Clause): boolean =>
  clause.tokens.some((t, i) => {
    // "Whip the cream until it holds": the cue speaks of what was named.
    if (clause.cueAt !== null && i >= clause.cueAt.from && i < clause.cueAt.to) return false;
    return pointers.has(t.text)
      ? i > clause.verbAt - 3 && !isNoun(clause, i + 1)
      : i >= clause.verbAt && pronouns.has(t.text);
  });

const isNoun = (clause: Clause, i: number): boolean => {
  const next = clause.tokens[i];
  return (
    next !== undefined &&
    next.kind === "word" &&
    !/^(to|for|in|into|on|with|and|until|till|at|over|aside|together|up|out|down|is|bubble|cook|simmer|rest|cool|stand|sit)$/.test(
      next.text,
    )
  );
};

/** "Boil it down and pour over", "pipe over the curd": what was lifted out or filled before, under what is in hand. */
export const laidUnder = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  current: Pool | null,
): Pool | null => {
  if (current === null || !/^(pour|pipe|drizzle|spread|brush)$/.test(chosen.technique.id)) return null;
  const at = clause.tokens.findIndex((t, i) => i > clause.verbAt && /^(over|onto)$/.test(t.text));
  if (at < 0) return null;
  const other = (p: Pool): boolean => p !== current && p.contents.size > 0 && !p.primed;
  const next = clause.tokens[at + 1];
  const ends = next === undefined || /^([,;.]|and|then)$/.test(next.text);
  if (ends && chosen.technique.id !== "pipe")
    return current.partial ? newestPool(reader.kitchen, (p) => other(p) && p.aside) : null;
  const noun = clause.tokens[at + 2];
  const unknown =
    /^(the|your|its|each|every)$/.test(next?.text ?? "") &&
    noun?.kind === "word" &&
    !isTool(noun.text) &&
    !vessels.has(stem(noun.text));
  return unknown && (/^(pipe|brush)$/.test(chosen.technique.id) || current.raw === false)
    ? newestPool(reader.kitchen, (p) => other(p) && !p.onHeat)
    : null;
};

/** "Add the fillets": a noun that names neither a line of the list nor a product. */
export const namesSomething = (clause: Clause): boolean => {
  const next = clause.tokens[clause.verbTo + 1];
  return (
    /^(the|your|these|those)$/.test(word(clause, clause.verbTo)) &&
    next?.kind === "word" &&
    !vessels.has(stem(next.text)) &&
    !/^(heat|oven|lid|rest|pan)$/.test(next.text)
  );
};

/** "Return to the oven": it goes there alone. "Put the thighs back, and into the oven": first into their pot. */
export const isOvenPlace = (clause: Clause): boolean => {
  if (clause.station?.station !== "oven") return false;
  const oven = clause.tokens.findIndex((t) => t.text === "oven");
  return !clause.tokens.slice(clause.verbAt, oven).some((t) => /^(,|and|then)$/.test(t.text));
};

/** "Mix the brine. Slice the beef. Marinate the meat overnight": in what was mixed for it; null when nothing was. */
export const inMarinade = (
  reader: StepReader,
  named: readonly (Pool | null)[],
  current: Pool | null,
): readonly Pool[] | null => {
  if (named.length > 1) return null;
  const meats = reader.classes.membersOf("meat");
  const isMeat = (i: number): boolean => meats.includes(i);
  const meat = named[0] ?? current;
  const bath = newestPool(
    reader.kitchen,
    (p) => p !== meat && p.contents.size > 1 && !p.onHeat && !p.baked && ![...p.contents].some(isMeat),
  );
  if (meat?.raw !== true || bath?.did.has("mix") !== true || meat.contents.size === 0) return null;
  return [...meat.contents].every(isMeat) ? [meat, bath] : null;
};

/** "Simmer the lentils. Meanwhile whisk the dressing. Drain": the pot that boils, when what is in hand is none. */
export const onTheFire = (reader: StepReader, current: Pool | null): Pool | null =>
  current === null || current.onHeat || current.raw
    ? null
    : newestPool(reader.kitchen, (p) => p.onHeat && /^(simmer|boil|cook)$/.test([...p.did].at(-1) ?? ""));
