import type { Token } from "../../measure/tokens.ts";
import { tailWords } from "./line-words.ts";
import { isAdverb, isModifier, isParticiple, leadsToParticiple, lowerAt } from "./modifiers.ts";

const nameMarks = new Set(["-", "&", "'", "\u2019", ".", "%", "*"]);

const endsAtMark = (tokens: readonly Token[], at: number, end: number): boolean => {
  const token = tokens[at];
  if (token?.kind !== "mark") return false;
  if (!nameMarks.has(token.text)) return true;
  if (token.text === "-") return token.start > (tokens[at - 1]?.end ?? 0);
  return token.text === "." && at + 1 < end && (tokens[at + 1]?.start ?? 0) > token.end;
};

/** The end of the name: the first word that begins a tail, once something has been named. */
export const nameEnd = (tokens: readonly Token[], from: number, end: number): number => {
  let named = false;
  for (let i = from; i < end; i += 1) {
    const token = tokens[i];
    if (token === undefined) break;
    if (endsAtMark(tokens, i, end)) return i;
    if (/^[x\u00d7]$/i.test(token.text) && i > from && tokens[i + 1]?.kind === "number") return i;
    if (token.kind === "number" && i > from && tokens[i + 1]?.text !== "%")
      return !named && ["or", "and"].includes(lowerAt(tokens, i - 1)) ? i - 1 : i;
    if (token.kind === "word" && i > from) {
      const { lower } = token;
      const joint = ["or", "and", "but", "cut"].includes(lower);
      if (lower === "and" && isParticiple(tokens[i - 1]) && leadsToParticiple(tokens, i + 1, end)) continue;
      if (named && lower === "and") return i;
      // "white bread a day old"
      if (/^(?:an?|one|two|three)$/.test(lower) && lowerAt(tokens, i + 2) === "old") return i;
      // "butter the size of an egg"
      if (lower === "the" && lowerAt(tokens, i + 1) === "size") return i;
      if (lower === "of" && ["any", "your", "choice", "some"].includes(lowerAt(tokens, i + 1))) return i;
      if (!joint && tailWords.has(lower) && !(lower === "mixed" && !named)) return i;
      if (named && joint && (lower !== "cut" || lowerAt(tokens, i + 1) !== "")) return i;
    }
    if (token.text === "&" && named) return i;
    if (token.kind === "word" && !isModifier(token) && !["or", "and", "but"].includes(token.lower))
      named = true;
  }
  return end;
};

/** An unknown name ends before what is done to it. */
export const lastName = (tokens: readonly Token[], from: number, to: number): number => {
  let end = to;
  while (
    end > from + 1 &&
    (isParticiple(tokens[end - 1]) || isAdverb(tokens[end - 1]) || tokens[end - 1]?.kind === "mark")
  )
    end -= 1;
  return end;
};
