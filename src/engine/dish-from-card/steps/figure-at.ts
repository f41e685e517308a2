import { tenNumbers } from "../../measure/number-words.ts";
import { numberAt } from "./number-at.ts";
import { text } from "./read-length.ts";
import type { Token } from "./tokens.ts";

const ones: ReadonlyMap<string, number> = new Map([
  ["a", 1],
  ["one", 1],
  ["two", 2],
  ["three", 3],
  ["four", 4],
]);

const hundredsIn = (one: string, ten: string): number | null => {
  const hundreds = ones.get(one);
  const tens = ten === "ten" ? 10 : tenNumbers.get(ten);
  return hundreds === undefined || tens === undefined || one === "a" ? null : hundreds * 100 + tens;
};

/** Words by which a figure of a dial may be spoken, so that a run of words without any is passed over. */
export const spokenFigures: ReadonlySet<string> = new Set([
  "hundred",
  ...tenNumbers.keys(),
  ...[...ones.keys()].flatMap((one) => [...tenNumbers.keys(), "ten"].map((ten) => `${one}-${ten}`)),
]);

type Spoken = { readonly value: number; readonly next: number };

/** "180", "two hundred and ten", "a hundred and eighty", "one-eighty", "two twenty"; null for no figure. */
const oneFigure = (tokens: readonly Token[], i: number): Spoken | null => {
  const token = tokens[i];
  if (token === undefined || token.kind === "mark") return null;
  if (token.kind === "number") {
    const bare = numberAt(tokens, i);
    // A fraction is no figure of a dial.
    return bare === null || bare.next !== i + 1 ? null : bare;
  }
  const next = text(tokens, i + 1);
  if (next === "hundred") {
    const said = token.text === "a" ? numberAt(tokens, i + 1) : numberAt(tokens, i);
    if (said !== null) return said;
    const more = numberAt(tokens, text(tokens, i + 2) === "and" ? i + 3 : i + 2);
    const words = text(tokens, i + 2) === "and" && more !== null && more.value < 100;
    return token.text === "a"
      ? words
        ? { value: 100 + more.value, next: more.next }
        : { value: 100, next: i + 2 }
      : null;
  }
  if (token.text.includes("-")) {
    const [one = "", ten = ""] = token.text.split("-");
    const value = hundredsIn(one, ten);
    return value === null ? null : { value, next: i + 1 };
  }
  const value = hundredsIn(token.text, next);
  return value === null ? null : { value, next: i + 2 };
};

/** A bare figure or a span of two, its middle taken; `from` is the place of its sign or of its first word. */
type Figure = {
  readonly value: number;
  readonly from: number;
  readonly next: number;
  readonly range: boolean;
};

/** The figure of a dial or a thermometer that starts at a place: "180ish", "180-190", "minus 18"; null for none. */
export const figureAt = (tokens: readonly Token[], i: number): Figure | null => {
  const first = oneFigure(tokens, i);
  if (first === null) return null;
  let { value, next } = first;
  let range = false;
  const between = /^(between|from)$/.test(text(tokens, i - 1)) && text(tokens, next) === "and";
  if (between || text(tokens, next) === "to" || /^[-‐-―]$/.test(text(tokens, next))) {
    const high = oneFigure(tokens, next + 1);
    if (high !== null && high.value > value && high.value - value <= 50) {
      value = (value + high.value) / 2;
      next = high.next;
      range = true;
    }
  }
  // "180ish", "180-ish", "180 odd"
  const dash = /^[-‐-―]$/.test(text(tokens, next)) ? 1 : 0;
  if (/^(ish|odd)$/.test(text(tokens, next + dash))) next += dash + 1;
  const minus = signBefore(tokens, i);
  return { value: minus ? -value : value, from: minus ? i - 1 : i, next, range };
};

/** "minus 18", "-18": a dash that stands free before its figure is a minus. */
export const signBefore = (tokens: readonly Token[], i: number): boolean => {
  const sign = tokens[i - 1];
  if (sign === undefined) return false;
  if (sign.text === "minus") return true;
  return (
    /^[-\u2212\u2013]$/.test(sign.text) && sign.end === tokens[i]?.at && (tokens[i - 2]?.end ?? -1) < sign.at
  );
};
