import type { Clause } from "./clauses.ts";

/**
 * "Bake for 20 minutes at 220 °C, then 1 hour at 160 °C": two settings with a length each are two stretches of the same
 * work, one behind the other. Cue and core belong to the last.
 */
export const inTurn = (clause: Clause): readonly Clause[] => {
  const lengths = clause.times.filter((t) => t.kind === "length" || t.kind === "more" || t.kind === "last");
  if (clause.hit === null || clause.settings.length < 2 || lengths.length !== clause.settings.length)
    return [clause];
  const [first, second] = clause.settings;
  if (first === undefined || second === undefined) return [clause];
  // A second figure for the same oven ("180 °C (fan 160 °C)") has no joint before it.
  const joined = clause.tokens
    .slice(Math.min(first.to, lengths[0]?.to ?? 0), Math.max(second.from, lengths[1]?.from ?? 0))
    .some((t) => /^(then|and|before|followed|,)$/.test(t.text));
  if (!joined) return [clause];
  return clause.settings.map((setting, k) => {
    const length = lengths[k];
    const isLast = k === clause.settings.length - 1;
    return {
      ...clause,
      settings: [setting],
      times: length === undefined ? [] : [{ ...length, kind: "length" as const }],
      mentions: k === 0 ? clause.mentions : [],
      hints: k === 0 ? clause.hints : [],
      core: isLast ? clause.core : null,
      cue: isLast ? clause.cue : null,
      opens: clause.opens && k === 0,
      meanwhile: clause.meanwhile && k === 0,
      again: k > 0,
    };
  });
};
