import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { findUnit, measureFor, measureKind } from "../../larder/measures.ts";
import { type Estimate, scaleEstimate } from "../../measure/estimate.ts";
import { readRange } from "../../measure/read-number.ts";
import { type Token, tokensOf } from "../../measure/tokens.ts";
import { type Count, count } from "../../measure/units.ts";
import type { Card } from "../../model/card.ts";
import type { Yield } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import type { Words } from "../../model/span.ts";

const eaters =
  /^(?:people|persons?|guests?|servings?|portions?|covers?|helpings?|diners?|adults?|eaters?|heads?|hungry|friends|as|main|mains|starters?|generously|comfortably|easily|men|adult|plates?|family|us|you|them)$/;
const vessels =
  /\b(?:tins?|pans?|moulds?|molds?|dish(?:es)?|pots?|trays?|ramekins?|jars?|basins?|bottles?|cases?|glasses|loaf tin)\b/;

const wholes =
  /\b(?:cakes?|tarts?|lo(?:af|aves)|pies?|quiches?|terrines?|puddings?|flans?|cheesecakes?|pizzas?|traybakes?|roulades?|crumbles?|gateaux?|pav?lovas?|batch(?:es)?|trifles?|sponges?|breads?)\b/i;

const wordsFrom = (line: string, tokens: readonly Token[], from: number): string =>
  line
    .slice(tokens[from]?.start ?? line.length)
    .replace(/^(?:of|x|\u00d7)\s+/i, "")
    .replace(/[.;]\s.*$/s, "")
    .replace(/[\s.,;:)\]]+$/, "")
    .replace(/^\s*[-\u2013(]\s*/, "");

type Numbered = { readonly amount: Estimate<number>; readonly at: number; readonly next: number };

const firstNumber = (tokens: readonly Token[]): Numbered | null => {
  let article: Numbered | null = null;
  for (let i = 0; i < tokens.length; i += 1) {
    const read = readRange(tokens, i);
    if (read === null) continue;
    const { low, likely, high, next } = read;
    if (read.article) article ??= { amount: { low, likely, high }, at: i, next };
    // "6+" is six or more.
    else return { amount: { low, likely, high }, at: i, next: tokens[next]?.text === "+" ? next + 1 : next };
  }
  return article;
};

/** "Makes one 23 cm tart, cuts into 8": what a guest gets is a piece of it. Null when nothing is said of cutting. */
const cutInto = (words: Words): Yield | null => {
  const said = /\b(?:cuts?|slices?|divides?|portions) into (?=\S)/i.exec(words.text);
  if (said === null) return null;
  const tokens = tokensOf(words.text.slice(said.index + said[0].length));
  const found = firstNumber(tokens);
  if (found === null || found.at > 1 || !(found.amount.likely > 1)) return null;
  const noun = wordsFrom(words.text.slice(said.index + said[0].length), tokens, found.next);
  return { kind: "pieces", amount: found.amount, noun: noun === "" ? "pieces" : noun, words };
};

/**
 * "One 23 cm tart, 10 slices", "a loaf (serves 8)", "two tarts, each serving six": behind what is made stands how many it
 * serves. Null when it does not.
 */
const servedBehind = (words: Words): Yield | null => {
  const said =
    /(?:[,;(]|(?<=[\p{L})]\s)[\u2013-]\s)\s*(?:(?:about|roughly|say|or|giving|that's|to) )*(?<each>each )?(?<verb>serv(?:es?|ing)|feeds|feeding|enough for|for)?\s*(?:about |roughly )?(?<rest>[\p{L}\d].*)$/iu.exec(
      words.text,
    );
  const rest = said?.groups?.["rest"];
  if (
    said === null ||
    rest === undefined ||
    /^(?:serv|feeds|for )|\b(?:each|a head|per person|apiece)$/i.test(words.text) ||
    firstNumber(tokensOf(words.text.slice(0, said.index))) === null
  )
    return null;
  const tokens = tokensOf(rest);
  const found = firstNumber(tokens);
  if (found === null || found.at !== 0 || !(found.amount.likely > 1)) return null;
  const noun = wordsFrom(rest, tokens, found.next);
  const counted =
    /^(?:(?:good|small|large|thick|thin|generous) )?(?:slices|pieces|portions|squares|wedges|servings|helpings|covers|people|guests)\b/i;
  const verb = said.groups?.["verb"];
  if (verb === undefined ? !counted.test(noun) : noun !== "" && !eaters.test(noun.split(" ")[0] ?? ""))
    return null;
  const pieces = /(?:slices|pieces|squares|wedges)\b/i.test(noun);
  const first = firstNumber(tokensOf(words.text.slice(0, said.index)));
  const times = said.groups?.["each"] === undefined ? 1 : (first?.amount.likely ?? 1);
  const amount = scaleEstimate(found.amount, times);
  return { kind: pieces ? "pieces" : "portions", amount, noun: pieces ? noun : "", words };
};

/** "16 small, 2 each": how many a guest gets; 1 when nobody says. */
const eachGets = (text: string): number => {
  const said = /,\s*(?:about )?([\p{L}\d]+) (?:each|a head|per person|a person|apiece)\b/iu.exec(text);
  const tokens = tokensOf(said?.[1] ?? "");
  const read = said === null ? null : readRange(tokens, 0);
  return read === null || !(read.likely > 1) ? 1 : read.likely;
};

/** Reads the words of a yield. Masses come in grams and volumes in millilitres; a tin counts tins. Null when no number stands in them. */
export const readYield = (words: Words, region: Region): Yield | null => {
  const cut = cutInto(words) ?? servedBehind(words);
  if (cut !== null) return cut;
  const tokens = tokensOf(words.text);
  const found = firstNumber(tokens);
  if (found === null) return null;
  const { amount } = found;
  if (!(amount.high > 0)) return null;
  const before = words.text.slice(0, tokens[found.at]?.start ?? 0).toLowerCase();
  const glued = tokens[found.next]?.text === "-" ? found.next + 1 : found.next;
  const unit = findUnit(tokens[glued]?.text ?? "") ?? null;
  const kind = unit === null ? null : measureKind(unit);
  const rest = wordsFrom(words.text, tokens, found.next);
  const of = (k: Yield["kind"], estimate: Estimate<number>, noun: string): Yield => ({
    kind: k,
    amount: estimate,
    noun,
    words,
  });
  const next = tokens[found.next]?.lower ?? "";
  const each = eachGets(words.text);
  if (each > 1 && amount.likely > each) return of("portions", scaleEstimate(amount, 1 / each), "");
  if (/^(?:will )?do(?:es)?\b/.test(before) && /^(?:slices|pieces|squares|wedges|small|little)\b/i.test(rest))
    return of("pieces", amount, rest);
  const fills = /\b(?:fills?|to fill)\b/.test(before) || (kind === "length" && vessels.test(rest));
  if (fills) {
    // "Fills a 23 cm tin": the figure is the tin's, and there is one of it.
    const length =
      kind === "length" || /^["\u201d'\u2033]/.test(rest) || (kind === "volume" && vessels.test(rest));
    const noun = length ? words.text.slice(tokens[found.at]?.start ?? 0).replace(/[\s.]+$/, "") : rest;
    const article = readRange(tokens, 1);
    const counted = length
      ? article !== null && !article.article && article.next <= found.at
        ? article.likely
        : 1
      : null;
    return of("tin", counted === null ? amount : { low: counted, likely: counted, high: counted }, noun);
  }
  const size = unit === null || kind === null ? null : (measureFor(unit, region, null)?.size ?? null);
  const afterUnit = wordsFrom(words.text, tokens, glued + 1);
  const serves =
    /\b(?:serves?|servings?|feeds|portions?|sufficient|enough|for|covers|do|does|serve[sd]?)\b/.test(before);
  if (size !== null && kind === "mass" && !/^serv/.test(before))
    return of("mass", scaleEstimate(amount, size.likely), afterUnit);
  if (
    size !== null &&
    kind === "volume" &&
    !/^serv/.test(before) &&
    unit !== "cup" &&
    unit !== "scoop" &&
    unit !== "part"
  )
    return of("volume", scaleEstimate(amount, size.likely), afterUnit);
  if (
    unit === "cup" &&
    !serves &&
    !/^serv/.test(before) &&
    !/^yield \d+ portion/i.test(words.text) &&
    size !== null
  )
    return of("volume", scaleEstimate(amount, size.likely), afterUnit);
  const plain = rest === "" || eaters.test(next) || /^portion\b/i.test(rest);
  if (/^(?:servings?|portions?|serves|feeds)/.test(before.trim()) || plain || serves) {
    // "Servings: 6 patties" counts patties; "Serves 4 generously" counts people.
    const pieces =
      /^servings?\b/.test(before.trim()) && rest !== "" && !eaters.test(next) && /^[\p{L}]/u.test(rest);
    return of(
      pieces ? "pieces" : "portions",
      amount,
      pieces ? rest : rest.replace(/^(?:people|persons?|servings?|portions?|us|you|them)\b\s*/i, ""),
    );
  }
  // A tart or a loaf is cut up: one of it is no portion.
  return of(amount.likely < 3 && wholes.test(rest) ? "tin" : "pieces", amount, rest);
};

/** The yield that tells most: people before pieces, pieces before tins, tins before weights. */
export const chooseYield = (yields: readonly Yield[]): Yield | null => {
  const order: readonly Yield["kind"][] = ["portions", "pieces", "tin", "mass", "volume"];
  for (const kind of order) {
    const found = yields.find((y) => y.kind === kind);
    if (found !== undefined) return found;
  }
  return null;
};

/** How many a yield serves, when it counts people or pieces; null otherwise. */
export const portionsOf = (made: Yield | null): Estimate<Count> | null =>
  made === null || (made.kind !== "portions" && made.kind !== "pieces")
    ? null
    : { low: count(made.amount.low), likely: count(made.amount.likely), high: count(made.amount.high) };

/** Says of a yield that it makes nothing ("Serves 0"), which nobody can mean. */
export const doubtfulYields = (card: Card): readonly Finding[] =>
  card.yields.flatMap((words) => {
    const found = firstNumber(tokensOf(words.text));
    return found === null || found.amount.high > 0
      ? []
      : [makeFinding("amount-doubtful", card.source, words.span, { words: words.text, taken: "" })];
  });
