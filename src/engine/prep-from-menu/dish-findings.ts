import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Kitchen } from "../model/sitting.ts";
import { attendedMinutes, type Draft } from "./drafts.ts";
import type { Limit } from "./limits.ts";
import { turnsOf } from "./oven-turns.ts";
import { spanOf } from "./span-of.ts";
import type { Unit, Work } from "./work.ts";

/** Ovens that have to be filled in turns. */
export const turnFindings = (work: Work, drafts: readonly Draft[], kitchen: Kitchen): readonly Finding[] =>
  drafts.flatMap((draft) => {
    const turns = turnsOf(draft, kitchen);
    if (turns === 1) return [];
    const facts = { title: work.dish.title, station: "oven", turns };
    return [
      makeFinding("station-in-turns", work.dish.source, spanOf(draft.units) ?? work.dish.titleSpan, facts),
    ];
  });

/** Stations that the kitchen does not have. */
export const missingFindings = (
  work: Work,
  missing: readonly { readonly station: string; readonly unit: Unit }[],
): readonly Finding[] =>
  missing.map(({ station, unit }) =>
    makeFinding("station-missing", work.dish.source, unit.action.span, { title: work.dish.title, station }),
  );

/** A dish that does not say how long it holds. */
export const keepingFindings = (
  work: Work,
  lasts: readonly { readonly limit: Limit }[],
): readonly Finding[] => {
  const guessed = lasts.find((last) => !last.limit.stated);
  if (!guessed || !work.plated) return [];
  const facts = { title: work.dish.title, minutes: guessed.limit.most, where: guessed.limit.where };
  return [makeFinding("keeping-assumed", work.dish.source, work.dish.titleSpan, facts)];
};

/** Work of ten minutes and more whose length the words do not give. */
export const assumedFindings = (work: Work, units: readonly Unit[]): readonly Finding[] => {
  const said = new Set<string>();
  return units.flatMap((unit) => {
    const { action } = unit;
    const length = attendedMinutes(unit.segments);
    const asked = action.minutes === null || action.minutes.assumed;
    if (unit.timed !== null && unit.timed.because !== null) return [];
    if (!asked || length < 10 || said.has(action.id)) return [];
    said.add(action.id);
    const facts = { title: work.dish.title, verb: action.verb, minutes: Math.ceil(length) };
    return [makeFinding("minutes-assumed", work.dish.source, action.span, facts)];
  });
};

/** Minutes and share by which a length must differ from what anyone would expect before it is told. */
const worthTelling = { minutes: 2, share: 0.1, workedOut: 10, depth: 0.03 } as const;

/** A card that is baked in tins of a known size, where it stands in others, or not as deep as on the card. */
export const tinFindings = (work: Work, units: readonly Unit[]): readonly Finding[] => {
  const { title, source } = work.dish;
  return units
    .flatMap((unit) => {
      const { tins, taken: all } = unit.lot;
      if (tins === null || all === null || unit.kilos === 0 || unit.technique?.id !== "bake") return [];
      const { here, same, ...taken } = all;
      const common = { title, tins: taken.tins, deeper: taken.deeper, card: tins.name };
      const { span } = unit.action;
      if (!same)
        return here === null
          ? [makeFinding("tin-missing", source, span, { title, tins: taken.tins, card: tins.name })]
          : [makeFinding("tin-instead", source, span, { ...common, tin: here.name })];
      if (Math.abs(taken.deeper - 1) < worthTelling.depth) return [];
      const facts = { title, tins: taken.tins, deeper: taken.deeper, onCard: tins.count };
      return [makeFinding("tins-taken", source, span, facts)];
    })
    .slice(0, 1);
};

/** Lengths that were reckoned from mass, power, thickness and surface, with what they were reckoned from. */
export const timedFindings = (work: Work, units: readonly Unit[]): readonly Finding[] => {
  const said = new Set<string>();
  const { title, source } = work.dish;
  return units.flatMap((unit) => {
    const { action, timed, factor } = unit;
    if (timed === null || timed.because === null || said.has(action.id) || unit.segments.length === 0)
      return [];
    const { because, kilos, kilowatts, millimetres } = timed;
    const { low, likely, high } = timed.minutes;
    const minutes = Math.ceil(likely);
    const grams = Math.round(kilos * 1000);
    const common = { title, verb: action.verb, minutes, by: because, grams, kilowatts };
    const stated = action.minutes !== null && !action.minutes.assumed ? action.minutes.likely : null;
    if (stated === null) {
      if (likely < worthTelling.workedOut) return [];
      said.add(action.id);
      const facts = {
        ...common,
        low: Math.floor(low),
        high: Math.ceil(high),
        millimetres: Math.round(millimetres),
      };
      return [makeFinding("time-worked-out", source, action.span, facts)];
    }
    const apart = Math.abs(likely - stated);
    if (apart < worthTelling.minutes || apart < worthTelling.share * stated) return [];
    said.add(action.id);
    return [makeFinding("time-carried", source, action.span, { ...common, stated, factor })];
  });
};
