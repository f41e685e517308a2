import type { Clause } from "./clauses.ts";

/** "Peel, core and slice the apples": verbs in a row share the foods that the last of them names. */
export const shareObjects = (clauses: readonly Clause[]): readonly Clause[] => {
  const shared = [...clauses];
  for (let k = shared.length - 2; k >= 0; k -= 1) {
    const clause = shared[k];
    const next = shared[k + 1];
    if (clause?.hit == null || next === undefined || clause.mentions.length > 0) continue;
    if (!clause.hit.technique.miseEnPlace || next.mentions.length === 0) continue;
    if (
      clause.tokens
        .slice(clause.verbTo)
        .some(
          (t) =>
            t.kind === "word" && !/^(and|then|lightly|finely|roughly|well|carefully|thinly)$/.test(t.text),
        )
    )
      continue;
    // The places of the mentions lie in the next clause; the verb alone stands for them here.
    shared[k] = {
      ...clause,
      mentions: next.mentions.map((m) => ({ ...m, from: clause.verbAt, to: clause.verbAt + 1 })),
    };
  }
  return shared;
};
