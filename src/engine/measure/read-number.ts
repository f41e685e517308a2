import type { Estimate } from "./estimate.ts";
import { smallNumbers, tenNumbers } from "./number-words.ts";
import type { Token } from "./tokens.ts";

/** A number read from tokens: its estimate, the token after it, and how it was written. */
export type NumberRead = Estimate<number> & {
  readonly next: number;
  /** Only "a" or "an". */
  readonly article: boolean;
  /** "a few", "several": a word in the place of a number. */
  readonly vague: boolean;
};

const parts: ReadonlyMap<string, number> = new Map([
  ["half", 1 / 2],
  ["halves", 1 / 2],
  ["third", 1 / 3],
  ["thirds", 1 / 3],
  ["quarter", 1 / 4],
  ["quarters", 1 / 4],
  ["fourth", 1 / 4],
  ["fourths", 1 / 4],
  ["eighth", 1 / 8],
  ["eighths", 1 / 8],
]);
const fuzzy: ReadonlyMap<string, Estimate<number>> = new Map([
  ["few", { low: 2, likely: 3, high: 5 }],
  ["several", { low: 3, likely: 4, high: 7 }],
  ["couple", { low: 2, likely: 2, high: 3 }],
]);

const lowerAt = (tokens: readonly Token[], at: number): string => tokens[at]?.lower ?? "";

const sure = (value: number, next: number, article = false): NumberRead => ({
  low: value,
  likely: value,
  high: value,
  next,
  article,
  vague: false,
});

const hyphenated = (word: string): number | null => {
  if (!word.includes("-")) return null;
  const [first, second] = word.split("-");
  if (second === undefined) return null;
  const ten = tenNumbers.get(first ?? "");
  const one = smallNumbers.get(second);
  if (ten !== undefined && one !== undefined && one < 10) return ten + one;
  const over = smallNumbers.get(first ?? "");
  const part = parts.get(second);
  return over !== undefined && part !== undefined ? over * part : null;
};

/** "twenty", "three hundred and fifty"; how many tokens it took and what it is worth. */
const countingWords = (
  tokens: readonly Token[],
  at: number,
  begun: number | null = null,
): { value: number; next: number } | null => {
  let total = 0;
  let current: number | null = begun;
  let next = at;
  for (let i = at; i < tokens.length; i += 1) {
    const word = lowerAt(tokens, i);
    const joined = word === "and" && current !== null && total + current >= 100;
    if (joined && (smallNumbers.has(lowerAt(tokens, i + 1)) || tenNumbers.has(lowerAt(tokens, i + 1))))
      continue;
    const unit = smallNumbers.get(word);
    const ten = tenNumbers.get(word);
    const pair = hyphenated(word);
    if (word === "hundred" && current !== null && current < 100) current *= 100;
    else if (word === "thousand" && current !== null && current < 1000) {
      total = current * 1000;
      current = 0;
    } else if (pair !== null && pair >= 1 && (current === null || current % 100 === 0))
      current = (current ?? 0) + pair;
    else if (ten !== undefined && (current === null || current % 100 === 0)) current = (current ?? 0) + ten;
    else if (
      unit !== undefined &&
      (current === null || current % 100 === 0 || (current % 10 === 0 && unit < 10))
    )
      current = (current ?? 0) + unit;
    else break;
    next = i + 1;
  }
  return current === null ? null : { value: total + current, next };
};

/** "and a half", "and three quarters", "& 1/2" after a whole number; 0 when none follows. */
export const partAfter = (tokens: readonly Token[], at: number): { value: number; next: number } => {
  const none = { value: 0, next: at };
  if (!["and", "&"].includes(lowerAt(tokens, at))) return none;
  const first = tokens[at + 1];
  if (first?.kind === "number" && first.value < 1) return { value: first.value, next: at + 2 };
  const over = ["a", "an", "one"].includes(first?.lower ?? "")
    ? 1
    : (smallNumbers.get(first?.lower ?? "") ?? 0);
  const part = parts.get(lowerAt(tokens, at + 2));
  if (over > 0 && part !== undefined) return { value: over * part, next: at + 3 };
  const bare = parts.get(first?.lower ?? "");
  return bare !== undefined ? { value: bare, next: at + 2 } : none;
};

const dozens = (read: NumberRead, tokens: readonly Token[]): NumberRead => {
  const word = lowerAt(tokens, read.next);
  const factor = word === "dozen" || word === "doz" ? 12 : word === "score" ? 20 : 1;
  if (factor === 1) return read;
  const { low, likely, high, vague, next } = read;
  return {
    low: low * factor,
    likely: likely * factor,
    high: high * factor,
    vague,
    article: false,
    next: next + 1,
  };
};

const skipOfA = (tokens: readonly Token[], at: number): number => {
  let next = at;
  if (lowerAt(tokens, next) === "of" && ["a", "an"].includes(lowerAt(tokens, next + 1))) next += 1;
  return ["a", "an"].includes(lowerAt(tokens, next)) ? next + 1 : next;
};

/** Reads one number, in figures or words, at a token: "2", "1½", "two dozen", "half a", "a few". Null when there is none. */
const readNumber = (tokens: readonly Token[], at: number): NumberRead | null => {
  const token = tokens[at];
  if (token === undefined) return null;
  if (token.kind === "number") {
    const part = Number.isInteger(token.value) ? partAfter(tokens, at + 1) : { value: 0, next: at + 1 };
    const [value, upTo] = [token.value + part.value, token.upTo + part.value];
    // "½ a cabbage"
    const next = value < 1 ? skipOfA(tokens, part.next) : part.next;
    const read = { ...sure(value, next), likely: (value + upTo) / 2, high: upTo };
    return dozens(read, tokens);
  }
  if (token.kind !== "word") return null;
  const counted = countingWords(tokens, at);
  if (counted !== null) {
    const over = parts.get(lowerAt(tokens, counted.next));
    if (over !== undefined && counted.value < 10)
      return sure(counted.value * over, skipOfA(tokens, counted.next + 1));
    const part = partAfter(tokens, counted.next);
    return dozens(sure(counted.value + part.value, part.next), tokens);
  }
  const pair = hyphenated(token.lower);
  if (pair !== null) return sure(pair, skipOfA(tokens, at + 1));
  const article = token.lower === "a" || token.lower === "an";
  const word = article ? lowerAt(tokens, at + 1) : token.lower;
  const after = at + (article ? 2 : 1);
  const about = fuzzy.get(word);
  const counts = article || word !== "couple" || lowerAt(tokens, after) === "of";
  if (about !== undefined && counts)
    return {
      ...about,
      next: lowerAt(tokens, after) === "of" ? after + 1 : after,
      article: false,
      vague: word !== "couple",
    };
  const part = parts.get(word);
  if (part !== undefined && !word.endsWith("s")) return dozens(sure(part, skipOfA(tokens, after)), tokens);
  if (article && (word === "dozen" || word === "score")) return dozens(sure(1, at + 1), tokens);
  if (article && (word === "hundred" || word === "thousand")) {
    const large = countingWords(tokens, at + 1, 1);
    if (large !== null) return sure(large.value, large.next);
  }
  if (word === "dozen" && !article) return sure(12, at + 1);
  return article ? sure(1, at + 1, true) : null;
};

const dashes = new Set(["-", "\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2212", "~"]);

/** True for the marks that stand between the two ends of a range. */
export const isDash = (token: Token | undefined): boolean => token?.kind === "mark" && dashes.has(token.text);

/** Reads a number or a range of two: "2-3", "2 to 3", "two or three", "between 2 and 3". Null when there is none. */
export const readRange = (tokens: readonly Token[], at: number): NumberRead | null => {
  const between = lowerAt(tokens, at) === "between" || lowerAt(tokens, at) === "from";
  const first = readNumber(tokens, at + (between ? 1 : 0));
  if (first === null || first.article) return between ? null : first;
  const joint = tokens[first.next];
  const word = joint?.lower ?? "";
  if (!(isDash(joint) || word === "to" || word === "or" || (between && word === "and"))) return first;
  const second = readNumber(tokens, first.next + 1);
  if (second === null || second.article || second.vague) return first;
  // "400 g or 1 tin" is no range, and "3 - 1" is a slip or a mixed fraction: what grows is a range.
  if (second.high <= first.high) return first;
  return {
    low: first.low,
    likely: (first.low + second.high) / 2,
    high: second.high,
    next: second.next,
    article: false,
    vague: first.vague,
  };
};
