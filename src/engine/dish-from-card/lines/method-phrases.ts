import { type Token, tokensOf } from "../../measure/tokens.ts";
import type { Card } from "../../model/card.ts";
import type { Region } from "../../model/sitting.ts";
import type { Words } from "../../model/span.ts";
import { readAmounts } from "./read-amounts.ts";
import { type Phrase, readPhrase } from "./read-phrase.ts";

/** A stretch of the method that states an amount of a food, and the part it stands under. */
export type MethodPhrase = { readonly words: Words; readonly part: string | null };

const timeUnits =
  /^(?:min|mins|minutes?|hours?|hrs?|h|seconds?|secs?|days?|weeks?|degrees?|deg|\u00b0|c|f|times?|cm|mm|inch|inches|batches|people|portions?|%)$/i;

/** "a good slosh of cider, about 150 ml": where the figure that explains a vague word ends; 0 when there is none. */
const explained = (tokens: readonly Token[], at: number, region: Region): number => {
  if (
    tokens[at]?.text !== "," ||
    !/^(?:about|say|around|roughly|maybe|or)$/.test(tokens[at + 1]?.lower ?? "")
  )
    return 0;
  const read = readAmounts(tokens, at + 1, region);
  return read?.amounts.some((a) => a.unit !== "piece") === true ? (read.amounts.at(-1)?.span.end ?? 0) : 0;
};

const longestName = 5;

/** The food that begins right after an amount, however the talk goes on: the longest that ends in a name. */
const readSpoken = (
  line: string,
  tokens: readonly Token[],
  from: number,
  end: number,
  region: Region,
): Phrase | null => {
  let best: Phrase | null = null;
  for (let to = from + 1; to <= Math.min(end, from + longestName); to += 1) {
    const phrase = readPhrase(line, tokens, 0, to, region);
    const whole = phrase?.food != null && phrase.nameSpan.end === tokens[to - 1]?.end;
    if (whole) best = phrase;
  }
  return best;
};

/**
 * Amounts and foods that are told in the method itself, when a card has no list ("you want two onions, a good slosh of
 * cider"). Each food is taken where it is first told with an amount; a food without one is left to the method.
 */
export const phrasesInMethod = (card: Card, region: Region): readonly MethodPhrase[] => {
  const found: MethodPhrase[] = [];
  const seen = new Set<string>();
  for (const block of card.blocks) {
    if (block.role !== "method" && block.role !== "notes") continue;
    if (block.role === "notes" && block.heading !== null) continue;
    for (const line of block.lines) {
      const tokens = tokensOf(line.text);
      let at = 0;
      while (at < tokens.length) {
        // Amounts are looked for in the next few words only, so that the work grows in line with the text.
        const window = tokens.slice(at, at + 16);
        const read = readAmounts(window, 0, region);
        const unit = window[read?.next ?? 0]?.text ?? "";
        if (read === null || timeUnits.test(unit) || (read.size !== null && /\d/.test(read.size))) {
          at += 1;
          continue;
        }
        const stop = window.findIndex(
          (t, i) => i >= read.next && t.kind === "mark" && /[,.;:()]/.test(t.text),
        );
        const phrase = readSpoken(line.text, window, read.next, stop < 0 ? window.length : stop, region);
        if (phrase?.food == null || seen.has(phrase.food.id)) {
          at += Math.max(1, read.next);
          continue;
        }
        const start = window[0]?.start ?? 0;
        const end = Math.max(
          phrase.nameSpan.end,
          read.amounts.at(-1)?.span.end ?? 0,
          explained(window, Math.max(stop, phrase.next), region),
        );
        seen.add(phrase.food.id);
        found.push({
          words: {
            text: line.text.slice(start, end),
            span: { start: line.span.start + start, end: line.span.start + end },
          },
          part: block.part,
        });
        while (at < tokens.length && (tokens[at]?.start ?? 0) < end) at += 1;
      }
    }
  }
  return found;
};
