import {
  beginsUnit,
  findLevel,
  findSize,
  findUnit,
  measureKind,
  mostUnitWords,
} from "../../larder/measures.ts";
import { isDash } from "../../measure/read-number.ts";
import type { Token } from "../../measure/tokens.ts";
import { lowerAt } from "./modifiers.ts";

/** Steps over a full stop after an abbreviation. */
export const afterStop = (tokens: readonly Token[], at: number): number =>
  lowerAt(tokens, at) === "." ? at + 1 : at;

/** The longest run of tokens that writes a unit; null for none. */
export const readUnit = (tokens: readonly Token[], at: number): { unit: string; next: number } | null => {
  let best: { unit: string; next: number } | null = null;
  let written = "";
  for (let i = at; i < tokens.length && i < at + mostUnitWords * 2; i += 1) {
    const token = tokens[i];
    if (token === undefined || (token.kind !== "word" && token.text !== "." && token.text !== "-")) break;
    if (token.text === "." || token.text === "-") {
      if (i === at) break;
      continue;
    }
    // "100ml-ish"
    const text = token.lower.endsWith("-ish") ? token.text.slice(0, -"-ish".length) : token.text;
    written = written === "" ? text : `${written} ${text}`;
    const unit = findUnit(written);
    if (unit !== null) best = { unit, next: i + 1 };
    if (!beginsUnit(written)) break;
  }
  return best;
};

/** What stands between a number and its unit. */
export type Adjectives = {
  readonly level: string | null;
  readonly size: string | null;
  readonly next: number;
  /** Where only words of size and filling have been read. */
  readonly afterSize: number;
};

const shapes =
  /^(?:nice|very|old|decent|heavy|light|thin|thick|long|short|fresh|whole|thinly|thickly|finely|roughly|cut|sliced|peeled|crushed|plump|fine)$/;

/** What stands between a number and its unit: "heaped", "large", "thinly cut". */
export const readAdjectives = (tokens: readonly Token[], at: number, article: boolean): Adjectives => {
  let level: string | null = null;
  let size: string | null = null;
  let next = at;
  let afterSize = at;
  for (;;) {
    const word = lowerAt(tokens, next);
    const whole = readUnit(tokens, next);
    if (whole !== null && measureKind(whole.unit) === "vague" && whole.next > next + 1) break;
    if (whole !== null && article && (whole.unit === "little" || whole.unit === "bit")) break;
    const filled = findLevel(word);
    const sized = findSize(word);
    if (filled === null && sized === null && !shapes.test(word)) break;
    level = filled ?? level;
    size = sized === null ? size : word;
    const dashed = isDash(tokens[next + 1]) && lowerAt(tokens, next + 2) === "sized";
    next += dashed ? 3 : 1;
    if (lowerAt(tokens, next) === "-") next += 1;
    if (filled !== null || sized !== null)
      afterSize = afterSize === next - (dashed ? 3 : 1) ? next : afterSize;
  }
  return { level, size, next, afterSize };
};
