import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { findUnit } from "../../larder/measures.ts";
import { remembered } from "../../larder/remembered.ts";
import { addEstimates, type Estimate } from "../../measure/estimate.ts";
import { type Grams, grams } from "../../measure/units.ts";
import type { Card } from "../../model/card.ts";
import type { Alternative, Ingredient, WeightBasis } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span, Words } from "../../model/span.ts";
import { doubtfulFigure } from "./doubtful-figures.ts";
import { doubtfulUnit, findingsOf, type Place } from "./line-findings.ts";
import { phrasesInMethod } from "./method-phrases.ts";
import { toneMissing } from "./missing-amounts.ts";
import { readLine } from "./read-line.ts";
import type { Phrase } from "./read-phrase.ts";
import type { Reading } from "./reading.ts";
import { shifted, shiftedAmounts } from "./shift.ts";
import { withUnitBefore } from "./unit-said-before.ts";
import { type Weight, weigh, weighExtra, weighSilent } from "./weigh.ts";

// Typing changes one line at a time; the others are read as they were.
const readIn = {
  uk: remembered((line) => readLine(line, "uk")),
  us: remembered((line) => readLine(line, "us")),
  eu: remembered((line) => readLine(line, "eu")),
  au: remembered((line) => readLine(line, "au")),
} as const;

const alternativeOf = (phrase: Phrase, reading: Reading, place: Place): Alternative => {
  const amounts = phrase.amounts.length > 0 ? phrase.amounts : reading.amounts;
  const { best } = weigh({ ...phrase, amounts, preparation: [], purpose: null }, place.region);
  return {
    text: phrase.name,
    food: phrase.food?.id ?? null,
    name: phrase.name,
    amounts: shiftedAmounts(phrase.amounts, place.start),
    grams: best?.grams ?? null,
  };
};

const stated = new Set(["weighed", "volume"]);

/** A stated weight is as purchased, unless the food was prepared before it was weighed or is sold ready in a tin. */
const basisOf = (reading: Reading, weight: Weight | null): WeightBasis => {
  if (weight === null || !stated.has(weight.basis)) return "edible-portion";
  if (weight.basis === "volume") return "edible-portion";
  const tinned = reading.container === "tin" || reading.container === "can" || reading.container === "jar";
  const later = reading.preparation.some((p) => /\b(?:drained|prepared weight|peeled weight)\b/.test(p));
  return reading.prepared || tinned || later || reading.portion !== null ? "edible-portion" : "as-purchased";
};

// Foods that share one weight on a line ("500 g carrots and parsnips"): half each is likeliest, and nobody knows.
const shareOf = (weight: Estimate<Grams>, foods: number): Estimate<Grams> => ({
  low: grams((weight.low / foods) * 0.5),
  likely: grams(weight.likely / foods),
  high: grams((weight.high / foods) * 1.5),
});

const ingredientOf = (
  reading: Reading,
  index: number,
  line: Words,
  part: string | null,
  place: Place,
): { ingredient: Ingredient; findings: readonly Finding[] } => {
  const measured = weigh(reading, place.region);
  const silent = reading.amounts.length === 0 && reading.card === null;
  const best = measured.best ?? (silent ? weighSilent(reading, place.region) : null);
  const whole = reading.card !== null && best?.basis !== "weighed" && best?.basis !== "volume" ? null : best;
  const extra = reading.extra === null ? null : weighExtra(reading.extra, reading.food, place.region);
  const shared =
    whole === null ? null : reading.shared > 1 ? shareOf(whole.grams, reading.shared) : whole.grams;
  const weight =
    shared === null || extra === null ? shared : { ...shared, high: addEstimates(shared, extra).high };
  return {
    ingredient: {
      index,
      text: line.text,
      span: line.span,
      part,
      amounts: shiftedAmounts(reading.amounts, place.start),
      grams: weight,
      gramsBasis: whole?.basis ?? "none",
      weightBasis: basisOf(reading, whole),
      food: reading.food?.id ?? null,
      name: reading.name === "" ? line.text : reading.name,
      nameSpan: reading.name === "" ? line.span : shifted(reading.nameSpan, place.start),
      card: reading.card,
      state: reading.state,
      preparation: reading.preparation,
      purpose: reading.purpose ?? (part === "to serve" ? "to serve" : null),
      optional: reading.optional,
      alternatives: reading.alternatives.map((a) => alternativeOf(a, reading, place)),
      size: reading.size ?? (reading.pack === null ? null : packText(reading, place)),
      container: reading.container,
      portion: reading.portion,
      equipment: reading.equipment,
    },
    findings: findingsOf(reading, whole, measured.others, place),
  };
};

const packText = (reading: Reading, place: Place): string | null =>
  reading.pack === null ? null : place.line.slice(reading.pack.span.start, reading.pack.span.end);

/** "-3 litres" alone among lines without a dash is a slip of the keys; where others have it too it is the list's mark. */
const minusOf = (
  text: string,
  line: Words,
  glued: number,
): { readonly span: Span; readonly facts: { words: string; taken: string } } | null => {
  const figure = /^\d+(?:[.,/]\d+)?(?:\s*\p{L}+)?/u.exec(line.text)?.[0];
  const { start } = line.span;
  if (figure === undefined || glued > 1 || !/[-\u2212]/.test(text[start - 1] ?? "")) return null;
  return {
    span: { start: start - 1, end: start + figure.length },
    facts: { words: text.slice(start - 1, start + figure.length), taken: figure },
  };
};

/** Reads the ingredient lines of a card into foods with weights, and says what was assumed. Never throws. */
export const readIngredients = (
  card: Card,
  region: Region,
): { readonly ingredients: readonly Ingredient[]; readonly findings: readonly Finding[] } => {
  const ingredients: Ingredient[] = [];
  const findings: Finding[] = [];
  const doubted = new Set<string>();
  const listed = card.blocks.filter((b) => b.role === "ingredients");
  const marked = listed
    .flatMap((b) => b.lines)
    .filter((l) => /[-\u2212]/.test(card.text[l.span.start - 1] ?? ""));
  const glued = marked.length;
  const add = (line: Words, part: string | null): void => {
    const place: Place = { source: card.source, start: line.span.start, line: line.text, region };
    const doubtful = doubtfulFigure(line.text, (word) => findUnit(word) !== null);
    if (doubtful !== null)
      findings.push(
        makeFinding("amount-doubtful", card.source, shifted(doubtful.span, line.span.start), {
          words: line.text.slice(doubtful.span.start, doubtful.span.end),
          taken: "",
        }),
      );
    const minus = minusOf(card.text, line, glued);
    if (minus !== null) findings.push(makeFinding("amount-doubtful", card.source, minus.span, minus.facts));
    const readings = withUnitBefore(
      readIn[region](doubtful?.line ?? line.text),
      line,
      ingredients.at(-1),
      card.text,
    );
    if (readings.length === 0 && /\p{L}/u.test(line.text))
      findings.push(
        makeFinding("line-not-understood", card.source, line.span, { words: line.text.slice(0, 80) }),
      );
    for (const reading of readings) {
      const read = ingredientOf(reading, ingredients.length, line, part, place);
      ingredients.push(read.ingredient);
      findings.push(...read.findings);
      const doubt = doubtfulUnit(reading, place);
      if (doubt !== null && !doubted.has(doubt.key)) {
        doubted.add(doubt.key);
        findings.push(doubt.finding);
      }
    }
  };
  for (const block of listed) for (const line of block.lines) add(line, block.part);
  if (ingredients.length === 0) {
    // A dish told in one breath: the foods are in the method, with their amounts.
    for (const { words, part } of phrasesInMethod(card, region)) add(words, part);
    if (ingredients.length === 0 && (card.blocks.length > 0 || card.title !== null))
      findings.push(makeFinding("ingredients-missing", card.source, { start: 0, end: card.text.length }, {}));
  }
  return { ingredients, findings: toneMissing(findings, ingredients) };
};
