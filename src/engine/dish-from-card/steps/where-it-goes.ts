import type { Clause } from "./clauses.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** Behind "to", "into", "over", "with": where the food goes. */
export const isTarget = (clause: Clause, from: number): boolean => {
  for (let at = from - 1; at > clause.verbAt && at >= from - 6; at -= 1) {
    const here = word(clause, at);
    // "Grate in the ginger", "squeeze over the lime": what is named goes, and not to itself.
    if (at === clause.verbTo && /^(in|over|through)$/.test(here) && goesIn(clause)) return false;
    // "Fold in the chives": the particle of the verb, not a place.
    if (at === clause.verbAt + 1 && clause.verbTo > at && /^(in|through|together)$/.test(here)) return false;
    if (/^(to|into|over|onto|on|in|through|around|inside|under|between|with|upon)$/.test(here))
      return here !== "with" || clause.hit?.technique.id === "mix";
    if (/^(,|and)$/.test(here)) {
      // "On to the chocolate and the syrup": both are places.
      const joined = clause.mentions.find((m) => m.to === at);
      return joined !== undefined && joined.from > clause.verbAt && isTarget(clause, joined.from);
    }
  }
  return false;
};

/** "Rub with mustard", "put in a pan with the onion and the bay": it goes to something else, which is the object. */
export const behindWith = (clause: Clause, from: number): boolean => {
  for (let at = from - 1; at >= Math.max(clause.verbAt, from - 12); at -= 1) {
    if (/^(with|alongside)$/.test(word(clause, at))) return true;
    if (/^(then|to|into|over|onto|for|until|till)$/.test(word(clause, at))) return false;
  }
  return false;
};

/** "Grate in the ginger", "squeeze over the lime": the particle says that it goes to what is in hand. */
export const goesIn = (clause: Clause): boolean => {
  const last = word(clause, clause.verbTo - 1);
  const next = word(clause, clause.verbTo);
  const particle = /^(in|over|through|on)$/;
  if (clause.verbTo - clause.verbAt > 1 && particle.test(last)) return true;
  // "Sit the lamb on top": on what is in hand.
  if (
    clause.tokens.some(
      (t, i) => t.text === "on" && word(clause, i + 1) === "top" && word(clause, i + 2) !== "of",
    )
  )
    return true;
  // "Squeeze one lime over", "grate the ginger in".
  const end = clause.tokens.findLastIndex((t) => t.kind === "word");
  const closes = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbTo &&
      (t.text === "over" || t.text === "in" || t.text === "through") &&
      (i === end ||
        /^([,(]|and|then)$/.test(word(clause, i + 1)) ||
        (t.text === "over" && word(clause, i + 1) === "the" && /^(top|lot)$/.test(word(clause, i + 2)))),
  );
  if (closes > 0 && clause.mentions.some((m) => m.to === closes)) return true;
  if (!particle.test(next)) return false;
  return clause.mentions.some(
    (m) => m.from > clause.verbTo && !/^(a|an)$/.test(word(clause, clause.verbTo + 1)),
  );
};
