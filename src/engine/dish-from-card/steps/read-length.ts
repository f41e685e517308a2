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

const unitMinutes: ReadonlyMap<string, number> = new Map(
  Object.entries({
    second: 1 / 60,
    seconds: 1 / 60,
    sec: 1 / 60,
    secs: 1 / 60,
    minute: 1,
    minutes: 1,
    min: 1,
    mins: 1,
    "minutes-ish": 1,
    "mins-ish": 1,
    "hour-ish": 60,
    "hours-ish": 60,
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
    year: 525600,
    years: 525600,
  }),
);

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
  "ish",
  "odd",
  "solid",
  "gentle",
  "straight",
]);

// "20m", "45s", "20'": only when they stand right behind their figure.
const tightUnits: ReadonlyMap<string, number> = new Map(
  Object.entries({ m: 1, s: 1 / 60, "'": 1, "’": 1, "′": 1 }),
);

/** The unit of time at a place, after "-", "." or a filler; null when there is none. */
const unitAt = (tokens: readonly Token[], i: number): { minutes: number; next: number } | null => {
  const tight = tightUnits.get(text(tokens, i));
  const figure = tokens[i - 1];
  if (tight !== undefined && figure?.kind === "number" && figure.end === tokens[i]?.at)
    return { minutes: tight, next: i + 1 };
  let at = i;
  for (let skipped = 0; skipped < 3; skipped += 1) {
    const word = text(tokens, at);
    const unit = unitMinutes.get(word);
    // A lone "h" or "min" must stand right behind its number.
    if (unit !== undefined) return { minutes: unit, next: at + 1 };
    if (!fillers.has(word) && !isDash(word) && word !== "(" && word !== ")") return null;
    at += 1;
  }
  return null;
};

const vague: ReadonlyMap<string, readonly [low: number, likely: number, high: number]> = new Map([
  ["few", [2, 3, 5]],
  ["couple", [2, 2, 3]],
  ["several", [4, 5, 8]],
  ["some", [2, 5, 10]],
]);

/** A number with its parts: "two and a half", "1 and three-quarters", "two and one-half". */
const mixedAt = (tokens: readonly Token[], i: number): { value: number; next: number } | null => {
  const whole = numberAt(tokens, i);
  if (whole === null || text(tokens, whole.next) !== "and") return whole;
  const part = partAt(tokens, whole.next + 1);
  // "An hour and a half" has its unit before: that is read with the hour.
  return part === null || (unitAt(tokens, part.next) === null && joinsRange(tokens, part.next) === null)
    ? whole
    : { value: whole.value + part.value, next: part.next };
};

/** "a half", "three quarters", "one-half": a part of one; null for none. */
const partAt = (tokens: readonly Token[], i: number): { value: number; next: number } | null => {
  const article = /^an?$/.test(text(tokens, i));
  const number = article ? { value: 1, next: i + 1 } : numberAt(tokens, i);
  if (number !== null && number.value < 1) return number;
  const word = text(tokens, number?.next ?? i);
  if (/^three-quarters?$/.test(text(tokens, i))) return { value: 0.75, next: i + 1 };
  if (number === null || !Number.isInteger(number.value) || number.value > 3) return null;
  if (word === "half") return { value: 0.5, next: number.next + 1 };
  return /^quarters?$/.test(word) ? { value: 0.25 * number.value, next: number.next + 1 } : null;
};

/** "In a second pan", "a second of oil": no length of time. */
const isOrdinal = (tokens: readonly Token[], i: number): boolean =>
  text(tokens, i) === "second" &&
  tokens[i + 1]?.kind === "word" &&
  !/^(or|and|until|till|to|before|in|on|at|then|more|longer|per|each|over|with|under|so)$/.test(
    text(tokens, i + 1),
  );

/** A single length: "10 minutes", "an hour and a half", "half an hour", "a few minutes", "1 hour 15". */
const lengthAt = (tokens: readonly Token[], i: number): Length | null => {
  const first = text(tokens, i);
  if (first === "overnight") return night(i + 1);
  const second = text(tokens, i + 1);
  // "Till tomorrow", "until the following morning", "down to 5 inside the hour"
  if (first === "until" || first === "till") {
    const named = /^(the|next|following)$/.test(second);
    let day = i + 1;
    while (/^(the|next|following)$/.test(text(tokens, day))) day += 1;
    if (
      text(tokens, day) === "tomorrow" ||
      (/^(morning|day)$/.test(text(tokens, day)) && (named || day === i + 1))
    )
      return night(day + 1);
  }
  if (/^(inside|within)$/.test(first) && second === "the" && text(tokens, i + 2) === "hour")
    return exact(60, i + 3);
  if (second === "night") {
    if (/^(all|during|over)$/.test(first)) return night(i + 2);
    if (first === "the" && /^(for|through)$/.test(text(tokens, i - 1))) return night(i + 2);
  }
  if (first === "all" && second === "day") return night(i + 2);

  // "half an hour", "three quarters of an hour", "a quarter of an hour", "half a minute"
  const single = /^(an?|another)$/.test(first);
  let at = single ? i + 1 : i;
  const lead = mixedAt(tokens, at);
  const partWord = text(tokens, lead === null ? at : lead.next);
  if (/^(half|quarters?)$/.test(partWord) && (lead === null || Number.isInteger(lead.value))) {
    let next = (lead === null ? at : lead.next) + 1;
    if (isDash(text(tokens, next))) next += 1;
    if (text(tokens, next) === "of") next += 1;
    if (/^(an?|the)$/.test(text(tokens, next))) next += 1;
    const unit = unitMinutes.get(text(tokens, next));
    if (unit !== undefined && unit >= 1) {
      const value = (partWord === "half" ? 0.5 : 0.25) * (lead?.value ?? 1) * unit;
      return exact(value, next + 1);
    }
  }
  const hyphened = /^three-quarters$/.test(first) ? 0.75 : null;
  if (hyphened !== null) {
    let next = i + 1;
    while (/^(of|an?)$/.test(text(tokens, next))) next += 1;
    const unit = unitMinutes.get(text(tokens, next));
    if (unit !== undefined && unit >= 1) return exact(hyphened * unit, next + 1);
  }
  if (/^half-(an-)?(hour|minute)$/.test(first)) {
    const value = first.endsWith("hour") ? 30 : 0.5;
    return exact(value, i + 1);
  }

  // "a few minutes", "a couple of hours", "several days"
  const vagueWord = vague.get(text(tokens, at));
  if (vagueWord !== undefined) {
    let next = at + 1;
    if (text(tokens, next) === "of") next += 1;
    if (fillers.has(text(tokens, next))) next += 1;
    const unit = unitMinutes.get(text(tokens, next));
    if (unit !== undefined)
      return {
        low: vagueWord[0] * unit,
        likely: vagueWord[1] * unit,
        high: vagueWord[2] * unit,
        next: next + 1,
      };
    return null;
  }

  // "an hour", "a minute or two", "another minute", "an hour or so", "every minute or two"
  const each = /^(every|each)$/.test(text(tokens, i - 1));
  if ((single || each) && lead === null) {
    while (/^(further|extra|additional|full|good|whole|solid)$/.test(text(tokens, at))) at += 1;
    const unit = unitMinutes.get(text(tokens, at));
    if (unit === undefined || text(tokens, at) === "h" || isOrdinal(tokens, at)) return null;
    const next = at + 1;
    if (text(tokens, next) === "or" && text(tokens, next + 1) === "two")
      return { low: unit, likely: 1.5 * unit, high: 2 * unit, next: next + 2 };
    return withSmaller(tokens, exact(unit, next), unit);
  }

  if (lead === null) return null;
  const unit = unitAt(tokens, lead.next);
  if (unit === null) {
    // "½ an hour", "3/4 of an hour"
    let part = lead.next;
    while (/^(of|an?)$/.test(text(tokens, part))) part += 1;
    const of = lead.value < 1 && part > lead.next ? unitMinutes.get(text(tokens, part)) : undefined;
    return of !== undefined && of >= 1 ? exact(lead.value * of, part + 1) : null;
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

// What may stand behind a bare number of minutes: "an hour and ten at 170".
const closes = /^(|at|in|for|until|till|or|then|covered|on|over|with|if|and)$/;

/** Adds the smaller unit that follows: "1 hour 15 minutes", "1 h 30", "an hour and twenty", "an hour and a half". */
const withSmaller = (tokens: readonly Token[], span: Length, unit: number): Length => {
  let at = span.next;
  const and = text(tokens, at) === "and";
  if (and || text(tokens, at) === ",") at += 1;
  const part = and ? partAt(tokens, at) : null;
  if (part !== null && unitAt(tokens, part.next) === null) return longer(span, part.value * unit, part.next);
  const more = numberAt(tokens, at);
  if (more === null) return span;
  // "1 min 30": what is less than a minute are seconds.
  if (unit === 1 && at === span.next && more.value >= 10 && more.value < 60 && more.value % 5 === 0) {
    const after = tokens[more.next];
    const ends = after === undefined || after.kind === "mark" || closes.test(after.text);
    return ends && unitAt(tokens, more.next) === null ? longer(span, more.value / 60, more.next) : span;
  }
  const smaller = unitAt(tokens, more.next);
  if (smaller !== null)
    return smaller.minutes < unit ? longer(span, more.value * smaller.minutes, smaller.next) : span;
  const after = tokens[more.next];
  const bare =
    unit === 60 &&
    (and || at === span.next) &&
    more.value < 60 &&
    Number.isInteger(more.value) &&
    (after === undefined || after.kind === "mark" || closes.test(after.text)) &&
    !/^[°º%]$/.test(after?.text ?? "");
  // "1 hour 30" and "an hour and ten"; "1 hour, 2 onions" is none of them.
  const tens = more.value >= 5 && (and ? true : /^(h|hrs?|hours?)$/.test(text(tokens, at - 1)));
  return bare && tens ? longer(span, more.value, more.next) : span;
};

const joinsRange = (tokens: readonly Token[], i: number): number | null => {
  const word = text(tokens, i);
  if (isDash(word) || word === "to" || word === "or" || word === "till" || word === "and") return i + 1;
  return null;
};

/** "20 to 25", "five, six" before one unit; null when no second number follows. */
const secondNumber = (
  tokens: readonly Token[],
  a: { value: number; next: number },
  between: boolean,
): { value: number; next: number } | null => {
  const joint = joinsRange(tokens, a.next);
  if (joint !== null && (text(tokens, a.next) !== "and" || between)) return mixedAt(tokens, joint);
  const next = text(tokens, a.next) === "," ? numberAt(tokens, a.next + 1) : null;
  return next !== null && next.value === a.value + 1 ? next : null;
};

// "or overnight", "and up to 24 hours", ", ideally overnight", "(preferably 4 hours)".
const openEnd =
  /^(up|preferably|ideally|even|better|still|for|to|optionally|maybe|perhaps|possibly|anything|as|long|at|most|even-better|the|very|best)$/;

/** The greater of two lengths that words join ("at least 4 hours and up to 24", "2 hours, better still overnight"). */
const upTo = (tokens: readonly Token[], first: Length): Length | null => {
  let at = first.next;
  let marks = 0;
  while (/^[,(–—-]$/.test(text(tokens, at)) && marks < 2) {
    at += 1;
    marks += 1;
  }
  const joint = /^(or|and|but)$/.test(text(tokens, at));
  if (joint) at += 1;
  let words = 0;
  while (openEnd.test(text(tokens, at + words)) && words < 4) words += 1;
  const said = tokens
    .slice(at, at + words)
    .map((t) => t.text)
    .join(" ");
  // "Forty-five minutes, an hour if you like it firm."
  const wish = !joint && words === 0 && marks > 0 ? lengthAt(tokens, at) : null;
  if (wish !== null && /^if you\b/.test(`${text(tokens, wish.next)} ${text(tokens, wish.next + 1)}`))
    return wish.high > first.low ? wish : null;
  if (!(words > 0 || (joint && text(tokens, at - 1) === "or"))) return null;
  if (joint && text(tokens, at - 1) !== "or" && !/^up to$/.test(said)) return null;
  const maybe = /^(maybe|perhaps|possibly)$/.test(said);
  if (
    !joint &&
    !maybe &&
    !/^(up to|preferably|ideally|even better|better still|better|optionally|best)$/.test(said)
  )
    return null;
  // "20 to 25 minutes, maybe 30 for a big one" is of another piece.
  const same = (next: number): boolean => !maybe || !/^(for|if)$/.test(text(tokens, next));
  const second = lengthAt(tokens, at + words);
  if (second !== null)
    return second.long === true || (second.high > first.low && same(second.next)) ? second : null;
  // "At least 4 hours and up to 24", "three and a half hours, maybe four".
  const bare = said === "up to" || maybe ? mixedAt(tokens, at + words) : null;
  if (bare !== null && !same(bare.next)) return null;
  const unit = first.low >= 1440 ? 1440 : first.low >= 60 ? 60 : 1;
  return bare !== null && bare.value * unit > first.low ? exact(bare.value * unit, bare.next) : null;
};

/** A length or a range of lengths: "25-30 minutes", "20 minutes to half an hour", "2 hours or overnight". */
export const readLength = (tokens: readonly Token[], i: number): Length | null => {
  const between = text(tokens, i) === "between";
  const start = between ? i + 1 : i;
  // "25-30 minutes", "2 or 3 minutes", "two to two and a half hours": two numbers and one unit
  const a = mixedAt(tokens, start);
  if (a !== null) {
    const b = secondNumber(tokens, a, between);
    const unit = b === null ? null : unitAt(tokens, b.next);
    if (b !== null && unit !== null && b.value > a.value * 0.2) {
      const low = Math.min(a.value, b.value) * unit.minutes;
      const high = Math.max(a.value, b.value) * unit.minutes;
      return widened(tokens, { low, likely: (low + high) / 2, high, next: unit.next });
    }
  }
  const first = lengthAt(tokens, start);
  if (first === null) return null;
  const joint = joinsRange(tokens, first.next);
  if (joint !== null && (text(tokens, first.next) !== "and" || between)) {
    const second = lengthAt(tokens, joint);
    if (second !== null && second.high > first.low) return spanning(first, second);
  }
  return widened(tokens, first);
};

const widened = (tokens: readonly Token[], first: Length): Length => {
  const second = upTo(tokens, first);
  return second === null ? first : spanning(first, second);
};

const spanning = (first: Length, second: Length): Length => ({
  low: first.low,
  likely: second.long === true ? second.low : (first.low + second.high) / 2,
  high: second.high,
  next: second.next,
  long: second.long === true,
});

// Units, and words of a time that holds no unit of its own.
const timeWords = new Set([
  ...unitMinutes.keys(),
  ..."overnight tomorrow morning half-hour half-an-hour half-minute half-an-minute m s ' ’ ′".split(" "),
]);

/** True for a word without which there is no length of time. */
export const isTimeWord = (word: string): boolean => timeWords.has(word);
