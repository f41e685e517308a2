import type { Clause } from "./clauses.ts";
import { joiningTechniques, steeringTechniques } from "./word-sets.ts";

/** "Peel, core and slice the apples": verbs in a row share the foods that the last of them names. */
export const shareObjects = (clauses: readonly Clause[]): readonly Clause[] => {
  const shared = [...clauses];
  for (let k = shared.length - 2; k >= 0; k -= 1) {
    const clause = shared[k];
    const next = shared[k + 1];
    if (clause?.hit == null || next?.hit == null || clause.mentions.length > 0 || clause.hit.letting)
      continue;
    // "Stir and add the milk": what is stirred is in hand. "Melt and add the butter": the butter is melted.
    const prepares = clause.hit.technique.miseEnPlace || /^(melt|toast|sift)$/.test(clause.hit.technique.id);
    if (joiningTechniques.has(next.hit.technique.id) && !prepares) continue;
    if (steeringTechniques.has(clause.hit.technique.id)) continue;
    // "Drain, fish out the bay": the pot is drained.
    if (clause.hit.technique.id === "drain" && /^(take-out|discard)$/.test(next.hit.technique.id)) continue;
    if (!endsAtVerb(clause) || clause.hit.verb.includes(" ")) continue;
    const lender = next.lent ?? next;
    // "Shred the cabbage, salt, squeeze over a lime": what was in hand is salted.
    if (k > 0 && /^(salt|season)$/.test(clause.hit.technique.id)) continue;
    // "Stir, salt it": the salt is the second order's own.
    if (lender.mentions.some((m) => m.from === lender.verbAt && lender === next)) continue;
    // "Drain, and crush with the butter", "rinse, then blanch in the oil": the butter and the oil are the second order's own.
    const first = lender.mentions[0];
    const lead = first === undefined ? "" : (lender.tokens[first.from - 1]?.text ?? "");
    const led = /^(the|your|some|a|an)$/.test(lead)
      ? (lender.tokens[(first?.from ?? 0) - 2]?.text ?? "")
      : lead;
    if (/^(with|in|into|to|over|on|through)$/.test(led)) continue;
    // The places of the mentions lie in the lender; the verb alone stands for them here.
    shared[k] = {
      ...clause,
      mentions: lender.mentions.map((m) => ({ ...m, from: clause.verbAt, to: clause.verbAt + 1 })),
      lent: lender,
    };
  }
  return shared;
};

const endsAtVerb = (clause: Clause): boolean =>
  !clause.tokens
    .slice(clause.verbTo)
    .some(
      (t) =>
        t.kind === "word" && !/^(and|then|lightly|finely|roughly|well|carefully|thinly|or)$/.test(t.text),
    );
