import type { Action } from "../../model/dish.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import { isTool } from "./find-details.ts";
import { newestPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";
import { behindWith } from "./where-it-goes.ts";
import { pronouns, vessels } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** A pronoun of a clause means what is in hand. */
export const hasPronoun = (clause: Clause, fresh: readonly Fresh[]): boolean =>
  // "The onions go in, let them soften": the pronoun means what was just named.
  !fresh.some((f) => f.from < clause.verbAt) && hasBarePronoun(clause, fresh);

const pointers = new Set("this that these those".split(" "));

const hasBarePronoun = (clause: Clause, fresh: readonly Fresh[]): boolean =>
  clause.tokens.some((t, i) => {
    const pointer = pointers.has(t.text);
    if (pointer ? i <= clause.verbAt - 3 : i < clause.verbAt || !pronouns.has(t.text)) return false;
    // "Whisk everything for the glaze": those lines, and nothing that is in hand.
    if (fresh.some((f) => f.from === i)) return false;
    if (t.text === "everything" && word(clause, i + 1) === "for" && fresh.length > 0) return false;
    // "Clarify the butter, twenty minutes or so, and have it at 60": what was named in this breath.
    if (
      /^(it|them)$/.test(t.text) &&
      fresh.some((f) => f.from > clause.verbAt && f.to <= i) &&
      /^(have|keep|hold|leave)$/.test(word(clause, i - 1))
    )
      return false;
    // "Whip the cream until it holds": the cue speaks of what was named.
    if (clause.cueAt !== null && i >= clause.cueAt.from && i < clause.cueAt.to) return false;
    return !pointer || !isNoun(clause, i + 1);
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

/** "Mix the crumbs and the cheese and scatter over the top": what stood there before this sentence; null elsewhere. */
export const laidOver = (
  reader: StepReader,
  clause: Clause,
  before: Action | null,
  sentence: string,
): Pool | null => {
  const { current } = reader.kitchen;
  if (before === null || current === null || current.sentence !== sentence) return null;
  const over = clause.tokens.some(
    (t, i) =>
      i > clause.verbAt &&
      ((t.text === "over" &&
        // "Set it over a medium heat": on the fire, and on no food.
        !clause.tokens
          .slice(i + 1, i + 5)
          .some((w) => /^(heat|flame|hob|burners?|fire|stove)$/.test(w.text))) ||
        (t.text === "on" && word(clause, i + 1) === "top")),
  );
  return over
    ? newestPool(
        reader.kitchen,
        (p) => p !== current && p.sentence !== sentence && p.contents.size > 0 && !p.primed,
      )
    : null;
};

/** "Layer up in a big pot with the sugar": no word says what is layered, so it is all that was got ready; none elsewhere. */
export const gotReadyFor = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  fresh: readonly Fresh[],
  part: string | null,
): readonly Pool[] =>
  chosen.technique.id === "layer" &&
  fresh.length > 0 &&
  fresh.every((f) => f.from > clause.verbAt && behindWith(clause, f.from))
    ? reader.kitchen.pools.filter(
        (p) => p.raw && p.left > 0.001 && p.contents.size > 0 && p.last !== null && p.part === part,
      )
    : [];

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
    return newestPool(reader.kitchen, (p) => other(p) && p.aside && (current.partial || p.from === current));
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
