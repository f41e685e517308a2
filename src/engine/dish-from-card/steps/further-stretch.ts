import { techniqueById, verbReadings } from "../../larder/techniques.ts";
import type { Clause } from "./clauses.ts";

const isWork = (word: string): boolean => verbReadings(word).some((r) => r.form === "ing");

const joins = /^(add|pour|put)$/;

/**
 * "Onions in, low heat, 20 minutes", "stir into the pot, 10 minutes more", "flip, and another 3 minutes": the food is
 * brought or turned, and then it cooks so long.
 */
export const furtherStretch = (clause: Clause): readonly Clause[] => {
  const cook = techniqueById("cook");
  const time = clause.times.find((t) => t.kind === "length" || t.kind === "more");
  if (cook === null || clause.hit === null || time === undefined || time.long) return [clause];
  // "Into a hot oven, 220, for twenty minutes": it bakes from there on.
  if (clause.hit.unsaid === true && clause.station?.station === "oven") return [clause];
  const { technique } = clause.hit;
  if (
    technique.station !== "hands" ||
    clause.hit.letting ||
    time.from < clause.verbTo ||
    time.minutes.likely < 1
  )
    return [clause];
  if (clause.station !== null && !/^(burner|oven)$/.test(clause.station.station)) return [clause];
  const turned =
    time.kind === "more" && /^(turn|add|pour|put|stir|fold|uncover|cover|season)$/.test(technique.id);
  if (!turned && !joins.test(technique.id)) return [clause];
  // "Add the sugar, whisking until glossy, about 5 minutes": the work itself lasts so long.
  if (
    !turned &&
    clause.tokens.slice(clause.verbTo, time.from).some((t) => /ing$/.test(t.text) && isWork(t.text))
  )
    return [clause];
  let at = time.from - 1;
  while (/^(for|about|around|then|and|another|a|roughly|good|maybe)$/.test(clause.tokens[at]?.text ?? ""))
    at -= 1;
  const comma = clause.tokens[at]?.text === "," || /^(then|and)$/.test(clause.tokens[at + 1]?.text ?? "");
  const goes = clause.hit.verb === "go in" || clause.hit.verb === "add";
  const said =
    clause.mentions.length > 0 ||
    clause.tokens.some((t) => /^(it|them|these|this|back)$/.test(t.text)) ||
    turned;
  if (!comma || !said || (!turned && !goes && time.minutes.likely < 3)) return [clause];
  const from = clause.tokens[at + 1]?.at ?? clause.span.start;
  return [
    {
      ...clause,
      times: [],
      settings: [],
      heat: null,
      cue: null,
      cueAt: null,
      station: null,
      every: null,
      minding: null,
    },
    {
      ...clause,
      hit: { ...clause.hit, technique: cook, verb: "cook", letting: false, passive: false },
      span: { start: from, end: clause.span.end },
      verbSpan: { start: from, end: clause.tokens[time.to - 1]?.end ?? clause.span.end },
      times: clause.times,
      mentions: [],
      hints: [],
      opens: false,
      meanwhile: false,
      again: true,
    },
  ];
};
