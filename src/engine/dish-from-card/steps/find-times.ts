import type { Estimate } from "../../measure/estimate.ts";
import { type Minutes, minutes } from "../../measure/units.ts";
import { bareMinutes, leadsToBare } from "./bare-minutes.ts";
import { numberAt } from "./number-at.ts";
import { isDash, isTimeWord, type Length, night, readLength, text } from "./read-length.ts";
import type { Token } from "./tokens.ts";

/** What a time in the words is. */
export type TimeKind =
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
  if (!tokens.some((t) => isTimeWord(t.text) || leadsToBare(t.text))) return found;
  let i = 0;
  while (i < tokens.length) {
    const span = readLength(tokens, i);
    if (span === null) {
      const bare = plusBare(tokens, i, found.at(-1)) ?? bareMinutes(tokens, i);
      if (bare !== null) {
        found.push(phrase(bare.kind ?? kindOf(tokens, i, bare.next), bounded(tokens, i, bare), i));
        i = bare.next;
        continue;
      }
      if (text(tokens, i) === "next" && text(tokens, i + 1) === "day")
        found.push(phrase("wait", night(i + 2), i));
      // "In for the last minute"; "at the last minute" says when.
      if (
        /^(last|final)$/.test(text(tokens, i)) &&
        text(tokens, i + 1) === "minute" &&
        text(tokens, i - 2) === "for" &&
        text(tokens, i - 3) === "in"
      )
        found.push(phrase("last", { low: 1, likely: 1, high: 1, next: i + 2 }, i));
      i += 1;
      continue;
    }
    const over = plusOver(tokens, i, span.next, found.length > 0);
    if (!over && (isAge(tokens, span.next) || saysWhen(tokens, i, span.next))) {
      i = span.next;
      continue;
    }
    const kind = over ? "more" : kindOf(tokens, i, span.next);
    // "Overnight, eight hours at the least": the hours say how long the night is.
    const last = found.at(-1);
    if (last?.long && kind === "length" && i - last.to <= 2 && isNight(last.minutes)) found.pop();
    found.push(phrase(kind, bounded(tokens, i, span), i));
    i = span.next;
  }
  const eve = found.length > 0 ? -1 : nightBefore(tokens);
  return eve < 0 ? found : [phrase("length", night(eve + 2), eve)];
};

const isNight = ({ low, high }: Estimate<Minutes>): boolean => low === 480 && high === 720;

const readyAhead = /^(marinate|salt|brine|soak|cure|steep|infuse)$/;

/** "Salt it the night before": it stands so till then; -1 where nothing is left to stand. */
const nightBefore = (tokens: readonly Token[]): number => {
  const at = tokens.findIndex(
    (t, i) =>
      /^(night|day|evening)$/.test(t.text) &&
      text(tokens, i - 1) === "the" &&
      text(tokens, i + 1) === "before",
  );
  return at > 0 && tokens.slice(0, at).some((t) => readyAhead.test(t.text)) ? at : -1;
};

/** "3 days old", "a 3-day-old loaf". */
const isAge = (tokens: readonly Token[], next: number): boolean =>
  /^(old|ago)$/.test(text(tokens, next)) || (isDash(text(tokens, next)) && text(tokens, next + 1) === "old");

/** "20 minutes a pound plus 20 minutes over". */
const plusOver = (tokens: readonly Token[], i: number, next: number, follows: boolean): boolean =>
  follows &&
  (text(tokens, i - 1) === "plus" || /^(over|extra)$/.test(text(tokens, next))) &&
  tokens.slice(0, i).some((t) => /^(plus|and)$/.test(t.text));

/** "A quarter of an hour a kilo plus twenty", "25 minutes to the pound and 25 over": minutes, for the length before is a rate. */
const plusBare = (
  tokens: readonly Token[],
  i: number,
  last: TimePhrase | undefined,
): (Length & { readonly kind: "more" }) | null => {
  if (last?.kind !== "rate" || i - last.to > 7) return null;
  const joined = tokens.slice(last.to, i).some((t) => /^(plus|and)$/.test(t.text));
  const figure = joined ? numberAt(tokens, i) : null;
  if (figure === null || figure.value < 5 || figure.value > 60) return null;
  const after = text(tokens, figure.next);
  return /^(|[,.;)]|over|extra|more|at|then)$/.test(after)
    ? { low: figure.value, likely: figure.value, high: figure.value, next: figure.next, kind: "more" }
    : null;
};

/** "Ten minutes before the end", "a few minutes less than usual", "with ten minutes to go": no length of what is done. */
const saysWhen = (tokens: readonly Token[], from: number, next: number): boolean => {
  const behind = [0, 1, 2].map((k) => text(tokens, next + k)).join(" ");
  if (
    /^(less|fewer|short of|under the (?!foil|lid|grill|cloth|tap|weight|press|lamp)\w+|before the end|from the end|before the time|to go|ahead of)\b/.test(
      behind,
    )
  )
    return true;
  if (!/^(before|earlier|prior)\b/.test(behind)) return false;
  // "Take it out of the fridge an hour before you cook it" says how long it stands.
  const words = tokens.slice(0, from).map((t) => t.text);
  if (words.some((w) => /^(fridge|refrigerator|out|room)$/.test(w))) return false;
  // "Rest for 10 minutes before carving" is a length; "add the peas 10 minutes before serving" says when.
  const [one = "", two = ""] = before(tokens, from, 2);
  if (/^(for|at|least|to|between)$/.test(one) && from > 1) return false;
  if (/^(about|around|another|roughly|approximately|only|further|good)$/.test(one) && two === "for")
    return false;
  return !words.some((w) => waits.test(w));
};

// Work that is done for a length of time, whatever comes after it.
const waits =
  /^(rest|stand|cool|leave|left|let|allow|sit|chill|wait|soak|marinate|bake|cook|roast|simmer|boil|fry|prove|rise|steep|infuse|salt|freeze|refrigerate|steam|poach|knead|whisk|beat|drain|hang|relax|set)$/;

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
    (one === "than" && /^(less|more)$/.test(two)) ||
    (one === "of" && two === "upwards") ||
    isLeast(tokens, span.next)
  )
    return { ...span, high: Math.max(span.high, span.likely * 1.5) };
  const hedge = hedgeOf(tokens, from);
  if (hedge !== null && span.low === span.high)
    return {
      ...span,
      low: span.low * hedge[0],
      likely: span.likely * hedge[1],
      high: span.high * hedge[2],
    };
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

/** "Eight hours at the least", "three hours or more", "four hours minimum". */
const isLeast = (tokens: readonly Token[], next: number): boolean => {
  const [a = "", b = "", c = "", d = ""] = [0, 1, 2, 3].map((k) => text(tokens, next + k));
  if (/^(minimum|plus)$/.test(a)) return /^(|[,.;)]|and|then)$/.test(b);
  if (a === "or" && /^(more|longer)$/.test(b)) return true;
  return a === "at" && (b === "least" || (b === "the" && (c === "least" || (c === "very" && d === "least"))));
};

type Hedge = readonly [low: number, likely: number, high: number];

/** "The best part of an hour", "getting on for two hours", "well over an hour": how far from the round length. Common practice, no source. */
const hedgeOf = (tokens: readonly Token[], from: number): Hedge | null => {
  const [one = "", two = "", three = ""] = before(tokens, from, 3);
  if (one === "of" && two === "part" && /^(best|better|good)$/.test(three)) return [0.85, 0.92, 1];
  if (
    (one === "for" && two === "on" && /^(getting|going|coming)$/.test(three)) ||
    (one === "on" && /^(nigh|close|near)$/.test(two)) ||
    (/^(of)$/.test(one) && /^(shy|short)$/.test(two))
  )
    return [0.85, 0.95, 1];
  if (/^(over|above)$/.test(one)) return two === "well" ? [1, 1.15, 1.35] : [1, 1.08, 1.2];
  return null;
};

const before = (tokens: readonly Token[], i: number, count: number): readonly string[] =>
  Array.from({ length: count }, (_, k) => text(tokens, i - 1 - k));

const vagueLead =
  /^(only|just|about|around|approx|approximately|roughly|say|nearly|almost|some|good|another|further|those|these|the|that|first|an?)$/;

/** "After ten minutes", "after about those two hours". */
const isAfter = (tokens: readonly Token[], from: number): boolean => {
  let at = from - 1;
  while (at >= 0 && from - at < 5 && vagueLead.test(text(tokens, at))) at -= 1;
  return text(tokens, at) === "after";
};

const kindOf = (tokens: readonly Token[], from: number, next: number): TimeKind => {
  const [one = "", two = ""] = before(tokens, from, 2);
  if (/^(every|each)$/.test(one) || (one === "about" && two === "every")) return "interval";
  const lastly = (word: string): boolean => /^(last|final)$/.test(word);
  if (lastly(one) ? !/^(a|one|for)$/.test(two) : lastly(text(tokens, from))) return "last";
  if (isAfter(tokens, from)) return "wait";
  if (one === "first") return "length";
  if (one === "at") return "wait";
  const after = [0, 1, 2, 3].map((k) => text(tokens, next + k));
  const [a = "", b = "", c = "", d = ""] = after;
  if (isWait(from, after)) return "wait";
  if (/^(per|each|a|every|on|for|either)$/.test(a)) {
    if (
      sides.test(b) ||
      (/^(each|every|either|both)$/.test(b) && sides.test(c)) ||
      (b === "the" && c === "first" && d === "side")
    ) {
      // "A minute and a half on the first side and 30 seconds on the other": each side has its own.
      const own = b === "the" && tokens.slice(next + 3).some((t) => /^(other|second)$/.test(t.text));
      return (a === "on" && b === "one") || own ? "length" : "side";
    }
    if (/^batch(es)?$/.test(b) || (/^(each|every)$/.test(b) && /^batch$/.test(c))) return "batch";
    if (/^(lb|lbs|pound|kg|kilo|kilogram|kilos)$/.test(b) || (a === "per" && /^\d/.test(b))) return "rate";
  }
  // "In two batches for 11 minutes each"
  if (a === "each" && before(tokens, from, 8).some((w) => /^batch(es)?$/.test(w))) return "batch";
  // "On both sides for 3 minutes each"
  if (a === "each" && before(tokens, from, 6).some((w) => sides.test(w))) return "side";
  if (a === "to" && b === "the" && /^(lb|pound|kg|kilo)$/.test(c)) return "rate";
  if (a === "for" && /^(each|every)$/.test(b) && /^(lb|pound|kg|kilo)$/.test(c)) return "rate";
  if (a === "a" && (b === "side" || b === "batch")) return b === "side" ? "side" : "batch";
  if (a === "/" && b === "side") return "side";
  if (/^(another|further)$/.test(one) || /^(more|longer)$/.test(a)) return "more";
  for (let k = from; k < next; k += 1)
    if (/^(more|another|further|additional|extra)$/.test(text(tokens, k))) return "more";
  return "length";
};

/** "Ten minutes later", "24 h after soaking", "20 minutes in, turn it", "once 15 minutes are up". */
const isWait = (from: number, behind: readonly string[]): boolean => {
  const [a = "", b = ""] = behind;
  if (a === "later" || (a === "after" && from <= 2)) return true;
  if (a === "in" && b === "," && from <= 2) return true;
  return /^(have|has|had|is|are)$/.test(a) && /^(passed|elapsed|gone|up|over)$/.test(b);
};
