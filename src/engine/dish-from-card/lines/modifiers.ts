import { findSize } from "../../larder/measures.ts";
import type { Token } from "../../measure/tokens.ts";
import { bareAdjectives, isDoneWord, preparationWords, qualityWords, stateWords } from "./line-words.ts";

/** The words of the line from one token to another (excluded), as they stand. */
export const slice = (line: string, tokens: readonly Token[], from: number, to: number): string =>
  from >= to ? "" : line.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0);

/** The lower-case text of a token; empty past the end. */
export const lowerAt = (tokens: readonly Token[], at: number): string => tokens[at]?.lower ?? "";

/** True for what was done to a food, or how it is: "chopped", "cold". */
export const isParticiple = (token: Token | undefined): boolean =>
  token !== undefined && (preparationWords.has(token.lower) || stateWords.has(token.lower));

/** "finely", "very". */
export const isAdverb = (token: Token | undefined): boolean =>
  token?.kind === "word" && (/ly$/.test(token.lower) || ["very", "quite", "well"].includes(token.lower));

/** True for a word that can stand before a food and names none. */
export const isModifier = (token: Token | undefined): boolean =>
  token !== undefined &&
  (isParticiple(token) ||
    qualityWords.has(token.lower) ||
    bareAdjectives.has(token.lower) ||
    findSize(token.lower) !== null ||
    isAdverb(token));

/** True when "and" joins two things done ("peeled and finely chopped"). */
export const leadsToParticiple = (tokens: readonly Token[], at: number, end: number): boolean => {
  for (let i = at; i < Math.min(end, at + 3); i += 1) {
    if (isParticiple(tokens[i])) return true;
    if (!qualityWords.has(lowerAt(tokens, i)) && !/ly$/.test(lowerAt(tokens, i))) return false;
  }
  return false;
};

const isDashSized = (tokens: readonly Token[], at: number): boolean =>
  lowerAt(tokens, at + 1) === "-" && lowerAt(tokens, at + 2) === "sized";

/** What stands before the food's name: sizes, states, preparations; where the name proper begins. */
export const readModifiers = (
  line: string,
  tokens: readonly Token[],
  from: number,
  to: number,
): { start: number; size: string | null; state: string[]; preparation: string[] } => {
  let at = from;
  let size: string | null = null;
  const state: string[] = [];
  const preparation: string[] = [];
  while (at < to - 1) {
    const token = tokens[at];
    if (token === undefined) break;
    const { lower } = token;
    let verb = at;
    while (verb < to - 1 && isAdverb(tokens[verb])) verb += 1;
    const word = lowerAt(tokens, verb);
    if (verb < to - 1 && isDoneWord(word) && !qualityWords.has(word) && !stateWords.has(word)) {
      preparation.push(slice(line, tokens, at, verb + 1).toLowerCase());
      at = verb + 1;
    } else if (stateWords.has(lower)) {
      state.push(lower);
      at += 1;
    } else if (
      findSize(lower) !== null &&
      !["regular", "average", "little", "baby", "mini", "fat"].includes(lower)
    ) {
      size = lower;
      at += isDashSized(tokens, at) ? 3 : 1;
    } else if (
      qualityWords.has(lower) ||
      (token.kind === "mark" && token.text !== "%") ||
      ["and", "or", "but"].includes(lower)
    )
      at += 1;
    else break;
  }
  return { start: at, size, state, preparation };
};

/** True when the tokens hold no noun, only what could stand before one ("bone-in", "stewed and strained"). */
export const isOnlyModifiers = (tokens: readonly Token[], from: number): boolean =>
  tokens
    .slice(from)
    .every((t) => t.kind !== "word" || isModifier(t) || t.lower === "and" || t.lower === "or");
