import type { Estimate } from "../../measure/estimate.ts";
import { type Minutes, minutes } from "../../measure/units.ts";
import { numberAt } from "./number-at.ts";
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

type Span = { low: number; likely: number; high: number; next: number; long?: boolean };

const unitMinutes: Readonly<Record<string, number>> = {
  second: 1 / 60,
  seconds: 1 / 60,
  sec: 1 / 60,
  secs: 1 / 60,
  minute: 1,
  minutes: 1,
  min: 1,
  mins: 1,
  minuets: 1,
  mn: 1,
  hour: 60,
  hours: 60,
  hr: 60,
  hrs: 60,
  h: 60,
  day: 1440,
  days: 1440,
  night: 720,
  nights: 720,
  week: 10080,
  weeks: 10080,
  month: 43200,
  months: 43200,
};

const text = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

const isDash = (word: string): boolean => /^[-‐-―~]$/.test(word);

// Words between a number and its unit: "10 more minutes", "another 5 or so minutes", "10 full minutes".
const fillers = new Set([
  "more",
  "further",
  "extra",
  "additional",
  "full",
  "good",
  "whole",
  "long",
  "or",
  "so",
]);

/** The unit of time at a place, after "-", "." or a filler; null when there is none. */
const unitAt = (tokens: readonly Token[], i: number): { minutes: number; next: number } | null => {
  let at = i;
  for (let skipped = 0; skipped < 3; skipped += 1) {
    const word = text(tokens, at);
    const unit = unitMinutes[word];
    // A lone "h" or "min" must stand right behind its number.
    if (unit !== undefined) return { minutes: unit, next: text(tokens, at + 1) === "." ? at + 1 : at + 1 };
    if (!fillers.has(word) && !isDash(word) && word !== "(" && word !== ")") return null;
    at += 1;
  }
  return null;
};

const vague: Readonly<Record<string, readonly [low: number, likely: number, high: number]>> = {
  few: [2, 3, 5],
  couple: [2, 2, 3],
  several: [4, 5, 8],
  some: [2, 5, 10],
};

/** A single length: "10 minutes", "an hour and a half", "half an hour", "a few minutes", "1 hour 15". */
const lengthAt = (tokens: readonly Token[], i: number): Span | null => {
  const first = text(tokens, i);
  if (first === "overnight") return { low: 480, likely: 600, high: 720, next: i + 1, long: true };
  if (/^(all|the|during)$/.test(first) && text(tokens, i + 1) === "night" && first !== "the")
    return { low: 480, likely: 600, high: 720, next: i + 2, long: true };
  if (first === "all" && text(tokens, i + 1) === "day")
    return { low: 480, likely: 600, high: 720, next: i + 2, long: true };

  // "half an hour", "three quarters of an hour", "a quarter of an hour", "half a minute"
  let at = i;
  if (first === "a" || first === "an") at += 1;
  const lead = numberAt(tokens, at);
  const partWord = text(tokens, lead === null ? at : lead.next);
  if (/^(half|quarters?)$/.test(partWord) && (lead === null || Number.isInteger(lead.value))) {
    let next = (lead === null ? at : lead.next) + 1;
    if (isDash(text(tokens, next))) next += 1;
    if (text(tokens, next) === "of") next += 1;
    if (/^(an?|the)$/.test(text(tokens, next))) next += 1;
    const unit = unitMinutes[text(tokens, next)];
    if (unit !== undefined && unit >= 1) {
      const value = (partWord === "half" ? 0.5 : 0.25) * (lead?.value ?? 1) * unit;
      return { low: value, likely: value, high: value, next: next + 1 };
    }
  }
  if (/^half-(an-)?(hour|minute)$/.test(first)) {
    const value = first.endsWith("hour") ? 30 : 0.5;
    return { low: value, likely: value, high: value, next: i + 1 };
  }

  // "a few minutes", "a couple of hours", "several days"
  const vagueWord = vague[text(tokens, at)];
  if (vagueWord !== undefined) {
    let next = at + 1;
    if (text(tokens, next) === "of") next += 1;
    if (fillers.has(text(tokens, next))) next += 1;
    const unit = unitMinutes[text(tokens, next)];
    if (unit !== undefined)
      return {
        low: vagueWord[0] * unit,
        likely: vagueWord[1] * unit,
        high: vagueWord[2] * unit,
        next: next + 1,
      };
    return null;
  }

  // "an hour", "a minute or two", "an hour and a half", "an hour or so"
  if ((first === "a" || first === "an") && lead === null) {
    if (/^(further|extra|additional|full|good|whole)$/.test(text(tokens, at))) at += 1;
    const unit = unitMinutes[text(tokens, at)];
    if (unit === undefined || text(tokens, at) === "h") return null;
    const next = at + 1;
    if (text(tokens, next) === "or" && text(tokens, next + 1) === "two")
      return { low: unit, likely: 1.5 * unit, high: 2 * unit, next: next + 2 };
    if (text(tokens, next) === "and" && text(tokens, next + 1) === "a" && text(tokens, next + 2) === "half")
      return { low: 1.5 * unit, likely: 1.5 * unit, high: 1.5 * unit, next: next + 3 };
    if (
      text(tokens, next) === "and" &&
      text(tokens, next + 1) === "a" &&
      text(tokens, next + 2) === "quarter"
    )
      return { low: 1.25 * unit, likely: 1.25 * unit, high: 1.25 * unit, next: next + 3 };
    return withSmaller(tokens, { low: unit, likely: unit, high: unit, next }, unit);
  }

  if (lead === null) return null;
  const unit = unitAt(tokens, lead.next);
  if (unit === null) {
    // "2 and a half hours", "two and a half hours"
    if (
      text(tokens, lead.next) === "and" &&
      text(tokens, lead.next + 1) === "a" &&
      text(tokens, lead.next + 2) === "half"
    ) {
      const after = unitMinutes[text(tokens, lead.next + 3)];
      const value = (lead.value + 0.5) * (after ?? 0);
      if (after !== undefined) return { low: value, likely: value, high: value, next: lead.next + 4 };
    }
    return null;
  }
  const value = lead.value * unit.minutes;
  return withSmaller(tokens, { low: value, likely: value, high: value, next: unit.next }, unit.minutes);
};

/** Adds the smaller unit that follows: "1 hour 15 minutes", "1 h 30", "2 minutes and 30 seconds". */
const withSmaller = (tokens: readonly Token[], span: Span, unit: number): Span => {
  let at = span.next;
  if (text(tokens, at) === "and" || text(tokens, at) === ",") at += 1;
  if (text(tokens, at) === "a" && text(tokens, at + 1) === "half" && text(tokens, at - 1) === "and")
    return {
      low: span.low + unit / 2,
      likely: span.likely + unit / 2,
      high: span.high + unit / 2,
      next: at + 2,
    };
  const more = numberAt(tokens, at);
  if (more === null) return span;
  const smaller = unitAt(tokens, more.next);
  const bare =
    smaller === null && unit === 60 && at === span.next && more.value < 60 && Number.isInteger(more.value);
  if (bare && tokens[at]?.kind === "number" && /^h(rs?)?$/.test(text(tokens, at - 1)))
    return {
      low: span.low + more.value,
      likely: span.likely + more.value,
      high: span.high + more.value,
      next: more.next,
    };
  if (smaller === null || smaller.minutes >= unit) return span;
  const value = more.value * smaller.minutes;
  return { low: span.low + value, likely: span.likely + value, high: span.high + value, next: smaller.next };
};

const joinsRange = (tokens: readonly Token[], i: number): number | null => {
  const word = text(tokens, i);
  if (isDash(word) || word === "to" || word === "or" || word === "till" || word === "and") return i + 1;
  return null;
};

/** A length or a range of lengths: "25-30 minutes", "20 minutes to half an hour", "2 hours or overnight". */
const rangeAt = (tokens: readonly Token[], i: number): Span | null => {
  const between = text(tokens, i) === "between";
  const start = between ? i + 1 : i;
  // "25-30 minutes", "2 or 3 minutes": two numbers and one unit
  const a = numberAt(tokens, start);
  if (a !== null) {
    const joint = joinsRange(tokens, a.next);
    if (joint !== null && (text(tokens, a.next) !== "and" || between)) {
      const b = numberAt(tokens, joint);
      const unit = b === null ? null : unitAt(tokens, b.next);
      if (b !== null && unit !== null && b.value > a.value * 0.2) {
        const low = Math.min(a.value, b.value) * unit.minutes;
        const high = Math.max(a.value, b.value) * unit.minutes;
        return { low, likely: (low + high) / 2, high, next: unit.next };
      }
    }
  }
  const first = lengthAt(tokens, start);
  if (first === null) return null;
  const joint = joinsRange(tokens, first.next);
  if (joint !== null && text(tokens, first.next) !== "and") {
    const at = /^(up|preferably|even|better|better,|for)$/.test(text(tokens, joint)) ? joint + 1 : joint;
    const second = lengthAt(tokens, at) ?? lengthAt(tokens, at + 1);
    if (
      second !== null &&
      second.high > first.low &&
      (at === joint || second.long === true || second.next > at)
    )
      return {
        low: first.low,
        likely: second.long === true ? second.low : (first.low + second.high) / 2,
        high: second.high,
        next: second.next,
        long: second.long === true,
      };
  }
  return first;
};

const sides = /^(side|sides)$/;

// Words of a time that holds no unit of its own.
const timeWords = new Set("overnight half-hour half-an-hour half-minute half-an-minute".split(" "));

/** Every time in a run of tokens, in order. Sizes, ages ("3-day-old") and counts are not times. */
export const findTimes = (tokens: readonly Token[]): readonly TimePhrase[] => {
  const found: TimePhrase[] = [];
  if (!tokens.some((t) => unitMinutes[t.text] !== undefined || timeWords.has(t.text))) return found;
  let i = 0;
  while (i < tokens.length) {
    const span = rangeAt(tokens, i);
    if (span === null) {
      if (text(tokens, i) === "next" && text(tokens, i + 1) === "day")
        found.push(phrase("wait", { low: 480, likely: 600, high: 720, next: i + 2, long: true }, i));
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
    const kind = kindOf(tokens, i, span.next);
    found.push(phrase(kind, bounded(tokens, i, span), i));
    i = span.next;
  }
  return found;
};

const phrase = (kind: TimeKind, span: Span, from: number): TimePhrase => ({
  kind,
  minutes: { low: minutes(span.low), likely: minutes(span.likely), high: minutes(span.high) },
  long: span.long === true || span.likely >= 480,
  from,
  to: span.next,
});

// "at least", "up to", "or so" open the ends of an estimate. The margins are common practice, no source.
const bounded = (tokens: readonly Token[], from: number, span: Span): Span => {
  const one = text(tokens, from - 1);
  const two = text(tokens, from - 2);
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
  if (a === "a" && (b === "side" || b === "batch")) return b === "side" ? "side" : "batch";
  if (a === "/" && b === "side") return "side";
  if (/^(another|further)$/.test(one) || /^(more|longer)$/.test(a)) return "more";
  for (let k = from; k < next; k += 1)
    if (/^(more|further|additional|extra)$/.test(text(tokens, k))) return "more";
  return "length";
};
