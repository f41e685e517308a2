import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";

/** A length of time in the words, in minutes; `next` is the place behind it. */
export type Length = {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly next: number;
  /** It goes over a night, or may. */
  readonly long?: boolean;
};

/** A night in the kitchen, in minutes, up to the place behind its words. Common practice, no source. */
export const night = (next: number): Length => ({ low: 480, likely: 600, high: 720, next, long: true });

const exact = (value: number, next: number): Length => ({ low: value, likely: value, high: value, next });

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
  fortnight: 20160,
  week: 10080,
  weeks: 10080,
  month: 43200,
  months: 43200,
};

/** The word at a place; empty outside of the tokens. */
export const text = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

/** True for a dash of any length. */
export const isDash = (word: string): boolean => /^[-‐-―~]$/.test(word);

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
    if (unit !== undefined) return { minutes: unit, next: at + 1 };
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
const lengthAt = (tokens: readonly Token[], i: number): Length | null => {
  const first = text(tokens, i);
  if (first === "overnight") return night(i + 1);
  if (/^(all|during)$/.test(first) && text(tokens, i + 1) === "night") return night(i + 2);
  if (first === "all" && text(tokens, i + 1) === "day") return night(i + 2);

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
      return exact(value, next + 1);
    }
  }
  const hyphened = /^three-quarters$/.test(first) ? 0.75 : null;
  if (hyphened !== null) {
    let next = i + 1;
    while (/^(of|an?)$/.test(text(tokens, next))) next += 1;
    const unit = unitMinutes[text(tokens, next)];
    if (unit !== undefined && unit >= 1) return exact(hyphened * unit, next + 1);
  }
  if (/^half-(an-)?(hour|minute)$/.test(first)) {
    const value = first.endsWith("hour") ? 30 : 0.5;
    return exact(value, i + 1);
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
      return exact(1.5 * unit, next + 3);
    if (
      text(tokens, next) === "and" &&
      text(tokens, next + 1) === "a" &&
      text(tokens, next + 2) === "quarter"
    )
      return exact(1.25 * unit, next + 3);
    return withSmaller(tokens, exact(unit, next), unit);
  }

  if (lead === null) return null;
  const unit = unitAt(tokens, lead.next);
  if (unit === null) {
    // "½ an hour", "3/4 of an hour"
    let part = lead.next;
    while (/^(of|an?)$/.test(text(tokens, part))) part += 1;
    const of = lead.value < 1 && part > lead.next ? unitMinutes[text(tokens, part)] : undefined;
    if (of !== undefined && of >= 1) return exact(lead.value * of, part + 1);
    // "two and one-half hours"
    const more = text(tokens, lead.next) === "and" ? numberAt(tokens, lead.next + 1) : null;
    if (more !== null && more.value < 1) {
      const whole = unitAt(tokens, more.next);
      if (whole !== null) return exact((lead.value + more.value) * whole.minutes, whole.next);
    }
    // "2 and a half hours", "two and a half hours"
    if (
      text(tokens, lead.next) === "and" &&
      text(tokens, lead.next + 1) === "a" &&
      text(tokens, lead.next + 2) === "half"
    ) {
      const after = unitMinutes[text(tokens, lead.next + 3)];
      const value = (lead.value + 0.5) * (after ?? 0);
      if (after !== undefined) return exact(value, lead.next + 4);
    }
    return null;
  }
  const value = lead.value * unit.minutes;
  return withSmaller(tokens, exact(value, unit.next), unit.minutes);
};

const longer = ({ low, likely, high }: Length, by: number, next: number): Length => ({
  low: low + by,
  likely: likely + by,
  high: high + by,
  next,
});

/** Adds the smaller unit that follows: "1 hour 15 minutes", "1 h 30", "2 minutes and 30 seconds". */
const withSmaller = (tokens: readonly Token[], span: Length, unit: number): Length => {
  let at = span.next;
  if (text(tokens, at) === "and" || text(tokens, at) === ",") at += 1;
  if (text(tokens, at) === "a" && text(tokens, at + 1) === "half" && text(tokens, at - 1) === "and")
    return longer(span, unit / 2, at + 2);
  const more = numberAt(tokens, at);
  if (more === null) return span;
  const smaller = unitAt(tokens, more.next);
  const bare =
    smaller === null && unit === 60 && at === span.next && more.value < 60 && Number.isInteger(more.value);
  if (bare && tokens[at]?.kind === "number" && /^h(rs?)?$/.test(text(tokens, at - 1)))
    return longer(span, more.value, more.next);
  if (smaller === null || smaller.minutes >= unit) return span;
  return longer(span, more.value * smaller.minutes, smaller.next);
};

const joinsRange = (tokens: readonly Token[], i: number): number | null => {
  const word = text(tokens, i);
  if (isDash(word) || word === "to" || word === "or" || word === "till" || word === "and") return i + 1;
  return null;
};

/** A length or a range of lengths: "25-30 minutes", "20 minutes to half an hour", "2 hours or overnight". */
export const readLength = (tokens: readonly Token[], i: number): Length | null => {
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

// Words of a time that holds no unit of its own.
const timeWords = new Set("overnight half-hour half-an-hour half-minute half-an-minute".split(" "));

/** True for a word without which there is no length of time. */
export const isTimeWord = (word: string): boolean => unitMinutes[word] !== undefined || timeWords.has(word);
