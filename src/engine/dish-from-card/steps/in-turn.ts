import { techniqueById } from "../../larder/techniques.ts";
import type { Clause } from "./clauses.ts";

/**
 * "Bake for 20 minutes at 220 °C, then 1 hour at 160 °C": two settings with a length each are two stretches of the same
 * work, one behind the other. Cue and core belong to the last.
 */
export const inTurn = (clause: Clause): readonly Clause[] => {
  const lengths = clause.times.filter((t) => t.kind === "length" || t.kind === "more" || t.kind === "last");
  if (clause.settings.length < 2) return [clause];
  if (clause.hit === null) return twoOvens(clause);
  if (lengths.length !== clause.settings.length) return turnedDown(clause);
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

/** "One oven at 220, the other at 150." */
const twoOvens = (clause: Clause): readonly Clause[] =>
  clause.times.length === 0 &&
  clause.tokens.some((t) => /^(oven|ovens)$/.test(t.text)) &&
  clause.tokens.some((t) => /^(other|second|bottom|lower)$/.test(t.text))
    ? clause.settings.map((setting) => ({ ...clause, settings: [setting] }))
    : [clause];

const turns =
  /^(then|down|up|back|dropping|turning|lowering|reducing|lowered|turned|dropped|reduced|raising|finishing|followed)$/;

/** "Start it at 230, down to 170 after a quarter of an hour", "first fry at 130, second fry at 185": another heat from there on. */
const turnedDown = (clause: Clause): readonly Clause[] => {
  const [first, second] = clause.settings;
  const fire = techniqueById("adjust-heat");
  if (first === undefined || second === undefined || clause.settings.length > 2 || fire === null)
    return [clause];
  if (clause.hit === null || Math.abs(first.celsius - second.celsius) < 10 || first.celsius < 80)
    return [clause];
  const word = (at: number): string => clause.tokens[at]?.text ?? "";
  let at = first.to;
  while (at < second.from && !turns.test(word(at))) at += 1;
  const again = word(first.to) === "," && word(first.to + 1) === "second" ? first.to + 1 : at;
  if (again >= second.from || clause.verbAt > again) return [clause];
  const after = clause.times.find((t) => t.kind === "wait" && t.from > again);
  const own = clause.times.filter((t) => t.from < again);
  // "Bake for 40 minutes at 220, turning down to 180 after 10": the length is that of the whole.
  if (own.length > 0 && /ing$/.test(word(again))) return [clause];
  const later = clause.times.filter((t) => t.from >= again && t !== after);
  const cued = clause.cueAt !== null && clause.cueAt.from > again;
  const onward = later.length > 0 || cued || word(again) === "second";
  const start = clause.tokens[again]?.at ?? clause.span.start;
  return [
    {
      ...clause,
      settings: [first],
      times: after === undefined || own.length > 0 ? own : [{ ...after, kind: "length" as const }],
      ...(cued ? { cue: null, cueAt: null, core: null } : {}),
      span: { start: clause.span.start, end: start },
    },
    {
      ...clause,
      hit: onward ? clause.hit : { ...clause.hit, technique: fire, verb: "turn down" },
      settings: [second],
      times: later,
      mentions: [],
      hints: [],
      every: null,
      core: cued ? clause.core : null,
      cue: cued ? clause.cue : null,
      span: { start, end: clause.span.end },
      verbSpan: { start, end: clause.tokens[second.to - 1]?.end ?? clause.verbSpan.end },
      opens: false,
      meanwhile: false,
      again: onward,
    },
  ];
};
