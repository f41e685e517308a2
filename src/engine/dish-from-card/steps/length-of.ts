import { type Estimate, exactly, scaleEstimate } from "../../measure/estimate.ts";
import { type Minutes, minutes } from "../../measure/units.ts";
import type { ActionMinutes } from "../../model/dish.ts";
import type { Technique } from "../../model/food.ts";
import type { Clause } from "./clauses.ts";
import type { TimePhrase } from "./find-times.ts";

/** What an action works on, as far as it is known. */
export type Load = {
  readonly grams: number | null;
  /** Pieces, when the list counts them. */
  readonly pieces: number | null;
};

const plus = (a: Estimate<Minutes>, b: Estimate<Minutes>): Estimate<Minutes> => ({
  low: minutes(a.low + b.low),
  likely: minutes(a.likely + b.likely),
  high: minutes(a.high + b.high),
});

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** Minutes that the words of a clause state for all the food; null when they state none. */
export const statedLength = (clause: Clause, technique: Technique, load: Load): Estimate<Minutes> | null => {
  const lengths = clause.times.filter((t) => t.kind !== "wait");
  const [first, ...others] = lengths;
  // "Serve within 10 minutes", "best eaten in a few hours": no length of serving.
  if (first === undefined || /^(serve|plate)$/.test(technique.id)) return null;
  let total = whole(
    first,
    clause,
    technique,
    load,
    others.some((t) => t.kind === "side"),
  );
  let last = first;
  for (const next of others) {
    const between = clause.tokens.slice(last.to, next.from).map((t) => t.text);
    const value = whole(next, clause, technique, load, lengths.filter((t) => t.kind === "side").length > 1);
    if (between.includes("or") && between.length <= 4) {
      const low = Math.min(total.low, value.low);
      const high = Math.max(total.high, value.high);
      total = {
        low: minutes(low),
        likely: next.long ? value.low : minutes((low + high) / 2),
        high: minutes(high),
      };
    } else if (
      next.kind === "more" ||
      next.kind === "side" ||
      between.some((w) => /^(then|and|side)$/.test(w))
    )
      total =
        next.minutes.likely === first.minutes.likely &&
        next.kind === "length" &&
        !between.includes("then") &&
        !between.includes("and")
          ? total
          : plus(total, value);
    last = next;
  }
  return total;
};

const whole = (
  time: TimePhrase,
  clause: Clause,
  technique: Technique,
  load: Load,
  otherSide: boolean,
): Estimate<Minutes> => {
  const inAll = /^(altogether|all|total)$/;
  const whole = [0, 1, 2].some(
    (k) => inAll.test(word(clause, time.to + k)) && word(clause, time.to) !== "all",
  );
  const batches =
    whole || (word(clause, time.to) === "all" && word(clause, time.to + 1) === "told")
      ? 1
      : (clause.batches ?? 1);
  if (time.kind === "side")
    return scaleEstimate(time.minutes, (otherSide ? 1 : 2) * (technique.law === "per-batch" ? batches : 1));
  if (time.kind === "batch") return scaleEstimate(time.minutes, Math.max(batches, 1));
  if (time.kind === "rate") {
    const unit = rateGrams(clause, time.to);
    return load.grams !== null && unit !== null
      ? scaleEstimate(time.minutes, Math.max(0.5, load.grams / unit))
      : time.minutes;
  }
  return technique.law === "per-batch" && batches > 1 ? scaleEstimate(time.minutes, batches) : time.minutes;
};

const rateGrams = (clause: Clause, at: number): number | null => {
  for (let i = at; i < at + 4; i += 1) {
    const here = word(clause, i);
    if (/^(lb|lbs|pound|pounds)$/.test(here)) return 453.59237;
    if (/^(kg|kilo|kilogram|kilos)$/.test(here)) return 1000;
    if (/^(g|grams?)$/.test(here)) return Number(word(clause, i - 1)) || null;
  }
  return null;
};

// Used when nothing on the card says how much there is. Common practice, no source.
const unknownKilos = 0.5;
const unknownPieces = 6;

/** The technique's usual length for this much food: what is put in when the words state none. */
export const usualLength = (technique: Technique, load: Load, batches: number | null): Estimate<Minutes> => {
  const kilos = load.grams === null ? unknownKilos : load.grams / 1000;
  const factor =
    technique.law === "per-kilo" || technique.law === "heating"
      ? Math.max(kilos, 0.02)
      : technique.law === "per-piece"
        ? (load.pieces ?? unknownPieces)
        : technique.law === "per-batch"
          ? (batches ?? 1)
          : 1;
  const setUp = technique.law === "fixed" ? 0 : technique.setUp;
  return plus(scaleEstimate(technique.minutes, factor), exactly(minutes(setUp)));
};

/** An estimate as the minutes of an action. */
export const asMinutes = (e: Estimate<Minutes>, assumed: boolean): ActionMinutes => {
  const round = (m: number): Minutes => minutes(Math.round(m * 100) / 100);
  return { low: round(e.low), likely: round(e.likely), high: round(e.high), assumed };
};
