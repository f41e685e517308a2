import type { Token } from "./tokens.ts";

const words: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  dozen: 12,
};

const signs: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅕": 1 / 5,
  "⅖": 2 / 5,
  "⅗": 3 / 5,
  "⅘": 4 / 5,
  "⅙": 1 / 6,
  "⅚": 5 / 6,
};

/** A number read from tokens; `next` is the place of the first token after it. */
export type NumberAt = { readonly value: number; readonly next: number };

const digits = (token: Token | undefined): number | null => {
  if (token === undefined || token.kind !== "number") return null;
  const sign = signs[token.text];
  if (sign !== undefined) return sign;
  const value = Number(token.text.replace(",", "."));
  return Number.isFinite(value) ? value : null;
};

const isSlash = (token: Token | undefined): boolean =>
  token !== undefined && (token.text === "/" || token.text === "⁄");

const numberWord = (text: string): number | null => {
  const simple = words[text];
  if (simple !== undefined) return simple;
  if (!text.includes("-")) return null;
  const [tens = "", unit = ""] = text.split("-");
  const a = words[tens];
  const b = words[unit];
  return a !== undefined && b !== undefined && a >= 20 && a < 100 && b < 10 ? a + b : null;
};

/**
 * The number that starts at a token: digits, fractions ("1/2", "1 1/2", "1½"), words ("ten", "forty-five", "three
 * hundred and fifty"). Null when none starts there. "a" and "an" are not numbers here.
 */
export const numberAt = (tokens: readonly Token[], i: number): NumberAt | null => {
  const first = digits(tokens[i]);
  if (first !== null) {
    if (isSlash(tokens[i + 1])) {
      const below = digits(tokens[i + 2]);
      if (below !== null && below > 0 && below <= 16 && first < 16)
        return { value: first / below, next: i + 3 };
    }
    const sign = signs[tokens[i + 1]?.text ?? ""];
    if (sign !== undefined && first >= 1 && signs[tokens[i]?.text ?? ""] === undefined)
      return { value: first + sign, next: i + 2 };
    const above = digits(tokens[i + 1]);
    const below = digits(tokens[i + 3]);
    if (
      Number.isInteger(first) &&
      above !== null &&
      below !== null &&
      isSlash(tokens[i + 2]) &&
      above < below &&
      below <= 16
    )
      return { value: first + above / below, next: i + 4 };
    return { value: first, next: i + 1 };
  }
  let value = numberWord(tokens[i]?.text ?? "");
  if (value === null) return null;
  let next = i + 1;
  const unit = words[tokens[next]?.text ?? ""];
  if (value >= 20 && value < 100 && value % 10 === 0 && unit !== undefined && unit < 10) {
    value += unit;
    next += 1;
  }
  if (tokens[next]?.text === "hundred") {
    value *= 100;
    next += 1;
    const rest = numberAt(tokens, tokens[next]?.text === "and" ? next + 1 : next);
    if (rest !== null && rest.value < 100 && tokens[next]?.kind === "word")
      return { value: value + rest.value, next: rest.next };
  }
  return { value, next };
};
