import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import { newestPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";
import { pans, vessels } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** "Heat a frying pan", "grease a tin": the vessel alone is worked on. */
export const heatsEmptyVessel = (
  clause: Clause,
  chosen: Chosen,
  fresh: readonly Fresh[],
  named: number,
): boolean => {
  if (
    !/^(heat|warm|preheat|grease|line|get|warm-plates|sterilise)$/.test(chosen.technique.id) ||
    named > 0 ||
    clause.hit?.verb === "heat through"
  )
    return false;
  if (/^(grease|line)$/.test(chosen.technique.id)) return true;
  const at = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbAt &&
      i <= clause.verbAt + 5 &&
      /^(pan|saucepan|pot|skillet|wok|casserole|griddle|grill|iron|fryer|barbecue)$/.test(t.text),
  );
  return (
    at >= 0 &&
    fresh.length === 0 &&
    !clause.tokens.slice(clause.verbAt, at).some((t) => /^(in|it|them|with|into)$/.test(t.text))
  );
};

const clean = new Set("wiped-out wiped washed rinsed cleaned cleaned-out empty clean".split(" "));
const intoWords = new Set("in into using".split(" "));

/** "In the wiped-out pot": nothing stands in it. */
export const asksCleanVessel = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      clean.has(t.text) && /^(the|a|your)$/.test(word(clause, i - 1)) && vessels.has(word(clause, i + 1)),
  );

const bestOf = /^(biggest|largest|widest|heaviest|deepest|smallest)$/;

/** "In your biggest pan", and none was called that yet: it is taken from the shelf. */
export const asksBestVessel = (reader: StepReader, clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      bestOf.test(t.text) &&
      /^(the|your|my|our)$/.test(word(clause, i - 1)) &&
      clause.tokens.slice(i + 1, i + 3).some((w) => vessels.has(w.stem)) &&
      newestPool(reader.kitchen, (p) => p.called?.includes(t.text) === true) === null,
  );

/** Words that ask for a vessel of its own: "in another pan", "in a large bowl". */
export const asksNewVessel = (reader: StepReader, clause: Clause): boolean => {
  if (asksBestVessel(reader, clause)) return true;
  for (let i = 0; i < clause.tokens.length; i += 1) {
    // "Over the base of a baking dish"
    const here = word(clause, i);
    if (
      (here === "base" || here === "bottom") &&
      word(clause, i + 1) === "of" &&
      /^(a|an)$/.test(word(clause, i + 2))
    )
      return true;
    if (!intoWords.has(here)) continue;
    const next = word(clause, i + 1);
    if (clean.has(word(clause, i + 2))) return true;
    if (/^(another|second)$/.test(next) && /^(one|,)$/.test(word(clause, i + 2))) return true;
    const end = clause.tokens
      .slice(i + 1, i + 6)
      .findIndex((t) =>
        /^(pans?|saucepans?|pots?|skillets?|wok|casseroles?|bowls?|jugs?|processor|blender|dish|dishes|cauldron|tins?|trays?|jars?|bottles?|microwave|mixer)$/.test(
          t.text,
        ),
      );
    if (end < 0 || clause.tokens.slice(i + 1, i + 1 + end).some((t) => /^(with|and|,|then|to)$/.test(t.text)))
      continue;
    if (
      /^(another|separate|second|different|new|clean)$/.test(next) ||
      /^(separate|second|different|new|clean|fresh)$/.test(word(clause, i + 2))
    )
      return true;
    if (/^(a|an|two|three|four|six|eight|individual|separate)$/.test(next)) return true;
    // "Pour flour into bowl", with the pot in hand on the stove: a vessel that nothing stands in yet.
    const noun = stem(word(clause, i + 1 + end));
    const { current } = reader.kitchen;
    const other =
      current?.vessel != null && current.vessel !== noun && !(pans.has(current.vessel) && pans.has(noun));
    if (
      other &&
      !pans.has(noun) &&
      noun !== "microwave" &&
      newestPool(reader.kitchen, (p) => p.vessel === noun) === null
    )
      return true;
  }
  return false;
};

/** "in the same pan", "in the same fat". */
export const sameVessel = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      t.text === "same" &&
      /^(pan|pot|saucepan|skillet|wok|bowl|fat|oil|casserole|dish|water|tin)$/.test(
        word(clause, i + 1) === "frying" || word(clause, i + 1) === "large"
          ? word(clause, i + 2)
          : word(clause, i + 1),
      ),
  );

/** The article before the vessel of a clause: "the" for one that was spoken of. */
export const articleOf = (clause: Clause): string => {
  const at = clause.tokens.findIndex((t) => vessels.has(t.text));
  if (at < 0) return "";
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1) {
    const here = word(clause, i);
    if (/^(the|a|an|your|that|another)$/.test(here)) return here;
    if (/^(in|into|to|from)$/.test(here)) return i === at - 1 ? "the" : "";
  }
  return "";
};

/** The pool in the vessel that a clause names; the one in hand when none is known by it. */
export const poolInVessel = (reader: StepReader, clause: Clause): Pool | null => {
  const { kitchen } = reader;
  const noun = clause.tokens.find((t) => vessels.has(t.stem))?.stem ?? "";
  // "The frying pan" is not the big pan that the pasta boils in.
  const at = clause.tokens.findIndex((t) => t.stem === noun);
  const kind = word(clause, at - 1);
  if (/^(frying|roasting|sauce|griddle|big|large|small|baking|mixing|serving)$/.test(kind)) {
    const called = newestPool(kitchen, (p) => p.called?.includes(`${kind} ${noun}`) === true);
    if (called !== null) return called;
  }
  const fits = (vessel: string | null): boolean =>
    vessel !== null && (vessel === noun || (pans.has(vessel) && (pans.has(noun) || noun === "")));
  if (kitchen.vacated !== null && sameVessel(clause) && fits(kitchen.vacated.vessel)) return kitchen.vacated;
  if (kitchen.emptied !== null && (fits(kitchen.emptied.vessel) || kitchen.emptied.vessel === null))
    return kitchen.emptied;
  if (kitchen.current !== null && fits(kitchen.current.vessel)) return kitchen.current;
  return newestPool(kitchen, (p) => fits(p.vessel)) ?? kitchen.current;
};
