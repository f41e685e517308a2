import { fractionSign } from "./fractions.ts";

/** A piece of a line: a number in figures (with its value), a word, or a single mark. Offsets count from the line's start. */
export type Token = {
  readonly kind: "number" | "word" | "mark";
  readonly text: string;
  /** The text in lower case. */
  readonly lower: string;
  readonly start: number;
  readonly end: number;
  /** What a number is worth; 0 for the others. */
  readonly value: number;
  /** The other end when figures write a choice ("5/6" bay leaves); equal to value for all others. */
  readonly upTo: number;
};

const wordPattern = /[\p{L}\p{M}](?:['\u2019]?[\p{L}\p{M}\p{N}]|[-\u2010\u2011](?=\p{L}))*/uy;
const digitsPattern = /\d+/y;
const spacePattern = /[\s\u200b-\u200f\u202a-\u202e\u2060\ufeff]+/uy;
const slash = /^[/\u2044\u2215]$/;

const matchAt = (pattern: RegExp, text: string, at: number): string | null => {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? null;
};

type Figure = { readonly end: number; readonly value: number; readonly upTo: number };

// Longer runs of digits are nobody's amount, and would lose their last digits as a number.
const mostDigits = 9;

const plainFigure = (text: string, at: number): Figure | null => {
  // ".5 tsp"
  if (text[at] === "." && !/[\p{L}\p{N}.]/u.test(text[at - 1] ?? "")) {
    const part = matchAt(digitsPattern, text, at + 1);
    const value = part === null ? 0 : Number(`0.${part.slice(0, mostDigits)}`);
    return part === null ? null : { end: at + 1 + part.length, value, upTo: value };
  }
  const whole = matchAt(digitsPattern, text, at);
  if (whole === null) return null;
  let end = at + whole.length;
  let digits = whole;
  const mark = text[end];
  const after = mark === "." || mark === "," ? matchAt(digitsPattern, text, end + 1) : null;
  if (after !== null) {
    const thousands = after.length === 3 && whole !== "0" && whole.length <= 3 && mark === ",";
    digits = thousands ? whole + after : `${whole}.${after}`;
    end += 1 + after.length;
  }
  const value = digits.length > mostDigits ? 0 : Number(digits);
  return { end, value, upTo: value };
};

const denominators = new Set([2, 3, 4, 5, 6, 8, 9, 10, 12, 16, 32, 64]);

/** "1/2" and "½"; "5/6" is a choice of five or six, which nobody writes for five sixths. */
const fractionAt = (text: string, at: number): Figure | null => {
  const sign = fractionSign(text[at] ?? "");
  if (sign !== null) return { end: at + 1, value: sign, upTo: sign };
  const above = matchAt(digitsPattern, text, at);
  if (above === null || !slash.test(text[at + above.length] ?? "")) return null;
  const below = matchAt(digitsPattern, text, at + above.length + 1);
  if (below === null) return null;
  const over = Number(above);
  const under = Number(below);
  const end = at + above.length + 1 + below.length;
  if (over >= 5 && under === over + 1) return { end, value: over, upTo: under };
  if (!denominators.has(under) || over === 0 || over > 99) return null;
  return { end, value: over / under, upTo: over / under };
};

const figureAt = (text: string, at: number): Figure | null => {
  const fraction = fractionAt(text, at);
  if (fraction !== null) return fraction;
  const whole = plainFigure(text, at);
  if (whole === null || !Number.isInteger(whole.value)) return whole;
  // "1½", "1 1/2", "1-1/2": a whole number and then a part of one, with at most one mark between.
  const gap = matchAt(/[ \u00a0\u2009\u202f]{1,2}|[-\u2010\u2011]/y, text, whole.end)?.length ?? 0;
  const part = fractionAt(text, whole.end + gap);
  if (part !== null && part.value < 1 && part.upTo < 1) {
    const value = whole.value + part.value;
    return { end: part.end, value, upTo: value };
  }
  return whole;
};

const isPlainLetter = (code: number): boolean =>
  (code >= 0x61 && code <= 0x7a) || (code >= 0x41 && code <= 0x5a);

const plainKind = (code: number): "letter" | "space" | "mark" | null => {
  if (code === 0x20) return "space";
  if (isPlainLetter(code)) return "letter";
  // Commas, brackets and the like; a full stop may begin a figure.
  return code > 0x20 && code < 0x7f && code !== 0x2e && !(code >= 0x30 && code <= 0x39) ? "mark" : null;
};

/** The end of a word of plain letters alone; -1 when anything else may belong to it, which the pattern then decides. */
const plainWordEnd = (text: string, from: number): number => {
  let at = from;
  while (at < text.length && isPlainLetter(text.charCodeAt(at))) at += 1;
  if (at >= text.length) return at;
  const code = text.charCodeAt(at);
  const mayGoOn = code >= 0x80 || code === 0x27 || code === 0x2d || (code >= 0x30 && code <= 0x39);
  return mayGoOn ? -1 : at;
};

const multiplier = /^[x\u00d7]\s?\d/i;

/** Cuts a line into tokens. Linear in its length; never throws. */
export const tokensOf = (line: string): readonly Token[] => {
  const tokens: Token[] = [];
  const push = (kind: Token["kind"], start: number, end: number, value = 0, upTo = value): void => {
    const text = line.slice(start, end);
    tokens.push({ kind, text, lower: text.toLowerCase(), start, end, value, upTo });
  };
  let at = 0;
  while (at < line.length) {
    // Plain letters and spaces are most of any line, and need no pattern to be told apart.
    const plain = plainKind(line.charCodeAt(at));
    if (plain === "space") {
      at += 1;
      continue;
    }
    const space = plain !== null ? null : matchAt(spacePattern, line, at);
    if (space !== null) {
      at += space.length;
      continue;
    }
    const figure = plain !== null ? null : figureAt(line, at);
    if (figure !== null) {
      push("number", at, figure.end, figure.value, figure.upTo);
      at = figure.end;
      continue;
    }
    // "2 x 400 g", and "x12 covers" at the start of a line.
    const mayMultiply = tokens.length === 0 || tokens.at(-1)?.kind === "number";
    if (mayMultiply && multiplier.test(line.slice(at, at + 3))) {
      push("mark", at, at + 1);
      at += 1;
      continue;
    }
    const plainEnd = plain === "letter" ? plainWordEnd(line, at) : -1;
    const wordEnd =
      plainEnd > 0
        ? plainEnd
        : plain === "mark"
          ? -1
          : at + (matchAt(wordPattern, line, at)?.length ?? -1 - at);
    if (wordEnd > at) {
      push("word", at, wordEnd);
      at = wordEnd;
      continue;
    }
    // A pair of surrogates is one mark, so that no span cuts a character in two.
    const code = line.codePointAt(at) ?? 0;
    const width = code > 0xffff ? 2 : 1;
    push("mark", at, at + width);
    at += width;
  }
  return tokens;
};
