import type { Estimate } from "../../measure/estimate.ts";
import { type Minutes, minutes } from "../../measure/units.ts";
import { numberAt } from "./number-at.ts";
import { isDash, isTimeWord, type Length, night, readLength, text } from "./read-length.ts";
import type { Token } from "./tokens.ts";

/** What a time in the words is. */
type TimeKind =
  /** How long something goes on. */
  | "length"
  /** Again so long ("another 5 minutes"). */
  | "more"
  /** For one side of two. */
  | "side"
  /** For one batch. */
  | "batch"
  /** "every 10 minutes". */
  | "interval"
  /** "after 10 minutes": a wait before what follows. */
  | "wait"
  /** "for the last 5 minutes". */
  | "last"
  /** For each kilogram. */
  | "rate";

/** A time in the words; `from` and `to` are places in the tokens, `to` excluded. */
export type TimePhrase = {
  readonly kind: TimeKind;
  readonly minutes: Estimate<Minutes>;
  /** "overnight", "until the next day", or eight hours and more. */
  readonly long: boolean;
  readonly from: number;
  readonly to: number;
};

const sides = /^(side|sides)$/;

/** Every time in a run of tokens, in order. Sizes, ages ("3-day-old") and counts are not times. */
export const findTimes = (tokens: readonly Token[]): readonly TimePhrase[] => {
  const found: TimePhrase[] = [];
  if (!tokens.some((t) => isTimeWord(t.text) || again.test(t.text))) return found;
  let i = 0;
  while (i < tokens.length) {
    const span = readLength(tokens, i);
    if (span === null) {
      const bare = bareMore(tokens, i);
      if (bare !== null) {
        found.push(phrase("more", bare, i));
        i = bare.next;
        continue;
      }
      if (text(tokens, i) === "next" && text(tokens, i + 1) === "day")
        found.push(phrase("wait", night(i + 2), i));
      i += 1;
      continue;
    }
    if (
      /^(old|ago)$/.test(text(tokens, span.next)) ||
      (isDash(text(tokens, span.next)) && text(tokens, span.next + 1) === "old")
    ) {
      i = span.next;
      continue;
    }
    // "a few minutes less than usual", "ten minutes before the end": no length of what is done.
    const behind = [0, 1, 2].map((k) => text(tokens, span.next + k)).join(" ");
    // "Two minutes before it's ready, warm the oil" says when; "take it out an hour before it's wanted", how long it stands.
    const says = i <= 1 && /^before (it|it's|they|they're|the \w+)\b/.test(behind);
    if (
      says ||
      /^(less|fewer|short of|under the|before the end|from the end|before the time)\b/.test(behind)
    ) {
      i = span.next;
      continue;
    }
    const kind = kindOf(tokens, i, span.next);
    found.push(phrase(kind, bounded(tokens, i, span), i));
    i = span.next;
  }
  return found;
};

const again = /^(another|further)$/;

/** "Bake for another 15": a number at the end of its words, without a unit, is minutes. */
const bareMore = (tokens: readonly Token[], i: number): Length | null => {
  if (!again.test(text(tokens, i - 1)) || !/^(for|it|them|a)$/.test(text(tokens, i - 2))) return null;
  const figure = numberAt(tokens, i);
  if (figure === null || figure.value < 1 || figure.value > 90) return null;
  const after = tokens[figure.next];
  if (after !== undefined && after.kind !== "mark" && !/^(or|until|till|and|then)$/.test(after.text))
    return null;
  return { low: figure.value, likely: figure.value, high: figure.value, next: figure.next };
};

const phrase = (kind: TimeKind, span: Length, from: number): TimePhrase => ({
  kind,
  minutes: { low: minutes(span.low), likely: minutes(span.likely), high: minutes(span.high) },
  long: span.long === true || span.likely >= 480,
  from,
  to: span.next,
});

// "at least", "up to", "or so" open the ends of an estimate. The margins are common practice, no source.
const bounded = (tokens: readonly Token[], from: number, span: Length): Length => {
  const one = text(tokens, from - 1);
  const two = text(tokens, from - 2);
  if (one === "than" && two === "more" && text(tokens, from - 3) === "no") return span;
  if (
    /^(least|minimum)$/.test(one) ||
    (one === "of" && two === "minimum") ||
    (one === "than" && /^(less|more)$/.test(two))
  )
    return { ...span, high: Math.max(span.high, span.likely * 1.5) };
  if (
    (one === "to" && two === "up") ||
    one === "maximum" ||
    one === "max" ||
    one === "under" ||
    one === "within"
  )
    return { ...span, low: span.low / 2 };
  const about =
    /^(about|around|approx|approximately|roughly|circa|say|nearly|almost|some)$/.test(one) ||
    (one === "." && two === "approx") ||
    (text(tokens, span.next) === "or" && text(tokens, span.next + 1) === "so") ||
    (one === "good" && two === "a");
  if (about && span.low === span.high) return { ...span, low: span.low * 0.9, high: span.high * 1.15 };
  return span;
};

const before = (tokens: readonly Token[], i: number, count: number): readonly string[] =>
  Array.from({ length: count }, (_, k) => text(tokens, i - 1 - k));

const kindOf = (tokens: readonly Token[], from: number, next: number): TimeKind => {
  const [one = "", two = "", three = ""] = before(tokens, from, 3);
  if (one === "every" || one === "each" || (one === "about" && two === "every")) return "interval";
  if (/^(last|final)$/.test(one) && !/^(a|one|for)$/.test(two)) return "last";
  if (one === "first" || (one === "the" && two === "after") || one === "after")
    return one === "first" ? "length" : "wait";
  if (one === "at") return "wait";
  if (
    (/^(about|around|another|approximately)$/.test(one) && two === "after") ||
    (one === "about" && three === "after")
  )
    return "wait";
  const after = [0, 1, 2, 3].map((k) => text(tokens, next + k));
  const [a = "", b = "", c = "", d = ""] = after;
  if (/^(per|each|a|every|on|for|either)$/.test(a)) {
    if (
      sides.test(b) ||
      (/^(each|every|either|both)$/.test(b) && sides.test(c)) ||
      (b === "the" && c === "first" && d === "side")
    )
      return a === "on" && b === "one" ? "length" : "side";
    if (/^batch(es)?$/.test(b) || (/^(each|every)$/.test(b) && /^batch$/.test(c))) return "batch";
    if (/^(lb|lbs|pound|kg|kilo|kilogram|kilos)$/.test(b) || (a === "per" && /^\d/.test(b))) return "rate";
  }
  // "On both sides for 3 minutes each"
  if (a === "each" && before(tokens, from, 6).some((w) => sides.test(w))) return "side";
  if (a === "to" && b === "the" && /^(lb|pound|kg|kilo)$/.test(c)) return "rate";
  if (a === "for" && /^(each|every)$/.test(b) && /^(lb|pound|kg|kilo)$/.test(c)) return "rate";
  if (a === "a" && (b === "side" || b === "batch")) return b === "side" ? "side" : "batch";
  if (a === "/" && b === "side") return "side";
  if (/^(another|further)$/.test(one) || /^(more|longer)$/.test(a)) return "more";
  for (let k = from; k < next; k += 1)
    if (/^(more|further|additional|extra)$/.test(text(tokens, k))) return "more";
  return "length";
};
