import { findFood } from "../larder/foods.ts";
import { findUnit, measureKind } from "../larder/measures.ts";
import { verbReadings } from "../larder/techniques.ts";
import { readRange } from "../measure/read-number.ts";
import { tokensOf } from "../measure/tokens.ts";
import type { Words } from "../model/span.ts";
import { ingredientLikeness, startsWithVerb, stepLikeness } from "./likeness.ts";
import { type Line, wordsAt } from "./lines-of-text.ts";
import { sentences } from "./sentences.ts";
import type { Stretch } from "./yield-words.ts";

// What a cook says before the foods: "For the lentils it's …", "Then …", "You want …".
const opening =
  /^(?:for the [\p{L}' -]{2,30}?,? (?=(?:it|you|i|that)\b|\d|an?\b))?(?:(?:it['\u2019]s|it is|that['\u2019]s|there['\u2019]s|you(?:['\u2019]ll)? (?:want|need)|i use|then|so|and|also|plus|get|take|have|about)[,:]? +)*/iu;

/** "two of stock to one of lentils": a ratio, and no amount of anything. */
const ratio =
  /^(?:\d+|an?|one|two|three|four|five|six|half) (?:parts? )?(?:of )?[\p{L}' -]{2,30}? to (?:\d+|an?|one|two|three|four|five|six|half)(?: parts?)?(?: of)? [\p{L}' -]{2,30}$/iu;

const vague =
  /^(?:(?:a|an|some|the) )?(?:(?:good|big|small|little|large|generous|decent|fat|heaped|scant) )*(?:pinch|handful|bunch|knob|dash|splash|slosh|glug|drizzle|dollop|squeeze|sprigs?|few|couple|plenty|lots|cloves?|slices?|tin|jar|packet|thumb|lump|bit|juice|zest|grating|spoonful|touch|stick|sheet|leaf)\b/i;

const hands = /^(?:cut|chop|slice|dice|peel|grate|shred|crush|split)/i;

/** Foods at the start of a sentence by themselves ("bay leaf", "white pepper"), perhaps with a word on their state behind. */
const namesFood = (piece: string): boolean => {
  const plain = piece
    .replace(/ (?:if|to taste|for)\b.*$/i, "")
    .replace(/\(.*?\)/g, "")
    .replace(/^(?:(?:freshly|finely|roughly) )?\p{L}+ed (?=\p{L})/iu, "");
  const words = plain.split(/\s+/);
  return words.length <= 5 && findFood(plain) !== null;
};

type Piece = Stretch & { readonly kind: "food" | "ratio" | "remark" | "amount" | "other" };

/** "about 700g", "say 20 g": how much of the food before it. */
const isAmount = (piece: string): boolean => {
  const tokens = tokensOf(piece.replace(/^(?:about|around|say|roughly|maybe|approx\.?) /i, "").slice(0, 40));
  const amount = readRange(tokens, 0);
  return (
    amount !== null &&
    !amount.article &&
    tokens.length === amount.next + 1 &&
    /^(mass|volume)$/.test(measureKind(findUnit(tokens[amount.next]?.text ?? "") ?? "") ?? "")
  );
};

const kindOf = (piece: string): Piece["kind"] => {
  if (ratio.test(piece)) return "ratio";
  if (isAmount(piece)) return "amount";
  const tokens = tokensOf(piece.slice(0, 80));
  const amount = readRange(tokens, 0);
  const after = tokens[amount?.next ?? 0]?.lower ?? "";
  // "Ten minutes later", "two of us": a figure of something else.
  if (amount !== null && /^(?:min|mins|minutes?|hours?|hrs?|days?|people|times?|degrees)$/.test(after))
    return "other";
  if (amount !== null && tokens.length > amount.next) return "food";
  if (vague.test(piece) || namesFood(piece)) return "food";
  if (/^(?:all|each|both) /i.test(piece) || hands.test(piece)) return "remark";
  return verbReadings(tokens[0]?.lower ?? "").some((r) => r.form === "past") ? "remark" : "other";
};

/** Cuts a sentence where another food is told: behind commas, semicolons, "and" before a figure, "so", "then". */
const piecesOf = (sentence: string): readonly Piece[] => {
  const skip = opening.exec(sentence)?.[0].length ?? 0;
  const found: Piece[] = [];
  let from = skip;
  const take = (end: number): void => {
    const piece = sentence.slice(from, end);
    const lead = piece.length - piece.trimStart().length;
    const said = opening.exec(piece.trimStart())?.[0].length ?? 0;
    const start = from + lead + said;
    const stop = from + piece.replace(/[\s.,;!]+$/, "").length;
    if (stop > start) found.push({ start, end: stop, kind: kindOf(sentence.slice(start, stop)) });
  };
  let depth = 0;
  for (const mark of sentence
    .slice(skip)
    .matchAll(/[()]|[,;](?!\d)\s*|\s+(?:and|plus)\s+(?=\d|an?\s|(?:one|two|three|four|five|six|half)\s)/gi)) {
    if (mark[0] === "(") depth += 1;
    else if (mark[0] === ")") depth -= 1;
    else if (depth === 0) {
      take(skip + mark.index);
      from = skip + mark.index + mark[0].length;
    }
  }
  take(sentence.length);
  return found;
};

/** The foods of a sentence that lists and orders nothing; null for any other sentence. */
const foodsOf = (sentence: string): readonly Stretch[] | null => {
  if (sentence.length > 400) return null;
  const pieces = piecesOf(sentence);
  const foods = pieces.filter((p) => p.kind === "food");
  if (foods.length === 0 || pieces.some((p) => p.kind === "other" && p.end - p.start > 40)) return null;
  const others = pieces.filter((p) => p.kind === "other").length;
  const [first] = pieces;
  if (first === undefined || first.kind === "other" || others * 3 > foods.length) return null;
  if (startsWithVerb(tokensOf(sentence.slice(first.start, first.end)))) return null;
  if (/\b(?:minutes?|mins|until|till|hours?)\b/i.test(sentence)) return null;
  // What is said of the foods before it stays with them: "an onion, a carrot and a stick of celery, all cut small".
  const shared = pieces.findLast((p) => p.kind === "remark");
  if (shared !== undefined && /^(?:all|each|both) /i.test(sentence.slice(shared.start, shared.end)))
    return [{ start: first.start, end: pieces.at(-1)?.end ?? sentence.length }];
  const lines: { start: number; end: number }[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    if (piece.kind === "ratio") continue;
    if ((piece.kind === "remark" || piece.kind === "amount") && last !== undefined) last.end = piece.end;
    else lines.push({ start: piece.start, end: piece.end });
  }
  return lines;
};

const least = 3;

/** What stands in a list or in the method by its words alone, whatever is around it. */
const asked = (line: Line, words: Words, listed: boolean, afterBlank: boolean): Line => {
  const tokens = tokensOf(words.text.slice(0, 400));
  return {
    ...line,
    words,
    heading: null,
    facts: null,
    bullet: false,
    number: null,
    afterBlank,
    ingredient: listed ? Math.max(8, ingredientLikeness(words.text, tokens, false)) : 0,
    step: listed ? 0 : Math.max(6, stepLikeness(words.text, tokens, false)),
    verb: !listed && startsWithVerb(tokens),
  };
};

/**
 * A list that is told as prose ("An onion and two carrots. A good slosh of oil, couple of cloves of garlic. Fry …"): one
 * line for each food, and the rest of the paragraph as work. Any other line is handed back as it is.
 */
export const withoutToldList = (line: Line): readonly Line[] => {
  const { text } = line.words;
  if (line.heading !== null || line.facts !== null || line.number !== null || line.bullet) return [line];
  if (text.length < 40 || !/[,;]/.test(text) || line.verb) return [line];
  const lists: Stretch[] = [];
  let end = 0;
  let foods = 0;
  for (const sentence of sentences(text)) {
    const said = foodsOf(text.slice(sentence.start, sentence.end));
    if (said === null) break;
    const amounts = piecesOf(text.slice(sentence.start, sentence.end)).filter((p) => p.kind === "food");
    foods += amounts.length;
    lists.push(...said.map((s) => ({ start: sentence.start + s.start, end: sentence.start + s.end })));
    end = sentence.end;
  }
  const counted = lists.filter((s) => {
    const tokens = tokensOf(text.slice(s.start, s.start + 60));
    const amount = readRange(tokens, 0);
    return amount !== null && (!amount.article || findUnit(tokens[amount.next]?.text ?? "") !== null);
  }).length;
  if (foods < least || counted === 0 || (end === text.length && !/[.!]$/.test(text) && foods < 5))
    return [line];
  const rest = text.slice(end);
  const start = end + rest.length - rest.trimStart().length;
  return [
    ...lists.map((s, i) => asked(line, wordsAt(line.words, s), true, i === 0 && line.afterBlank)),
    ...(start < text.length
      ? [asked(line, wordsAt(line.words, { start, end: text.length }), false, true)]
      : []),
  ];
};
