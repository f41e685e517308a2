import { fractionSign } from "../../measure/fractions.ts";
import { smallNumbers, tenNumbers } from "../../measure/number-words.ts";
import type { Token } from "./tokens.ts";

const wordValue = (text: string): number | undefined =>
  smallNumbers.get(text) ?? tenNumbers.get(text) ?? (text === "dozen" ? 12 : undefined);

/** A number read from tokens; `next` is the place of the first token after it. */
type NumberAt = { readonly value: number; readonly next: number };

const digits = (token: Token | undefined): number | null => {
  if (token === undefined || token.kind !== "number") return null;
  const sign = fractionSign(token.text);
  if (sign !== null) return sign;
  const value = Number(token.text.replace(",", "."));
  return Number.isFinite(value) ? value : null;
};

const isSlash = (token: Token | undefined): boolean =>
  token !== undefined && (token.text === "/" || token.text === "⁄");

const numberWord = (text: string): number | null => {
  const simple = wordValue(text);
  if (simple !== undefined) return simple;
  // "ten-ish", "twenty-odd"
  const soft = text.endsWith("ish") || text.endsWith("odd");
  const about = !soft ? undefined : /^(\p{L}+?)-?(?:ish|odd)$/u.exec(text)?.[1];
  if (about !== undefined) return wordValue(about) ?? null;
  if (!text.includes("-")) return null;
  const [tens = "", unit = ""] = text.split("-");
  // "one-half", "three-fourths" of the old books.
  const part = { half: 2, halves: 2, third: 3, thirds: 3, fourth: 4, fourths: 4, quarter: 4, quarters: 4 }[
    unit
  ];
  const above = wordValue(tens);
  if (part !== undefined && above !== undefined && above < part) return above / part;
  const a = wordValue(tens);
  const b = wordValue(unit);
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
    const sign = fractionSign(tokens[i + 1]?.text ?? "");
    if (sign !== null && first >= 1 && fractionSign(tokens[i]?.text ?? "") === null)
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
  const unit = wordValue(tokens[next]?.text ?? "");
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
