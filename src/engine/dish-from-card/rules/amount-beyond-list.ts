import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Amount, Dish, Ingredient, Step } from "../../model/dish.ts";
import { nameAt } from "../steps/find-mentions.ts";
import { nameIndexOf } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import { tokenise } from "../steps/tokens.ts";
import { placedActions, worksOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { gramsOf } from "./whole-weights.ts";

type Size = { readonly kind: "mass" | "volume"; readonly size: number };

const mass = (size: number): Size => ({ kind: "mass", size });
const volume = (size: number): Size => ({ kind: "volume", size });

/** Grams and millilitres of the units in which methods state amounts; spoons as UK and US books have them. */
const sizes: Readonly<Record<string, Size>> = {
  g: mass(1),
  kg: mass(1000),
  oz: mass(28.35),
  lb: mass(453.6),
  ml: volume(1),
  l: volume(1000),
  tsp: volume(5),
  tbsp: volume(15),
  cup: volume(240),
};

const unitOf = (word: string): string => {
  const w = word.toLowerCase().replace(/s$/, "");
  if (/^lit/.test(w)) return "l";
  if (/^tea/.test(w)) return "tsp";
  if (/^table/.test(w)) return "tbsp";
  if (/^pound/.test(w)) return "lb";
  if (/^kilo/.test(w)) return "kg";
  return /^ounce/.test(w) ? "oz" : w;
};

const amount =
  /(?<![\d/⁄.,])((?:\d+\s+)?\d+[/⁄]\d+|\d*\s*[½¼¾⅓⅔⅛]|\d+(?:[.,]\d+)?|(?<!\b(?:of|half|quarters?) )\b(?:half an?|an?|one|two|three|four|five|six)(?=\s))\s*(kilos?|kg|g|ml|litres?|liters?|l|tbsps?|tsps?|tablespoons?|teaspoons?|cups?|ounces?|oz|pounds?|lbs?)\b(?:\s+(?:of\s+)?(?:the\s+)?([\p{L} -]{0,40}))?/giu;

const inBracket = /\bthe\s+([\p{L} -]{2,30}?)\s*\(\s*(?:all |about )?$/iu;

/** More than this above the list is no rounding. Common practice, no source. */
const tolerance = 1.05;
/** What a line only roughly weighs ("3 leeks, about 450 g"; a slosh) may be this much more. Common practice, no source. */
const rough = 1.6;

/** The method takes more of something, in figures, than the list holds of it. Less is a part, and is fine. */
export const amountBeyondList: Rule = {
  code: "amount-beyond-list",
  check: (dish) => [
    ...dish.steps.flatMap((step) => [...piecesBeyond(dish, step), ...countBeyond(dish, step)]),
    ...dish.steps.flatMap((step) =>
      [...step.text.matchAll(amount)].flatMap((found) => {
        const size = sizes[unitOf(found[2] ?? "")];
        // "The butter (250 g)": the food stands before the bracket.
        const named = inBracket.exec(step.text.slice(Math.max(0, found.index - 40), found.index))?.[1];
        const lines = linesOf(dish, (named ?? found[3] ?? "").toLowerCase());
        const line = lines[0] ?? null;
        const listed = line === null || size === undefined ? null : mostOfAll(lines, size.kind);
        if (line === null || size === undefined || listed === null) return [];
        const stated = numberOf(found[1] ?? "") * size.size;
        if (stated <= listed.most) return [];
        const start = step.span.start + found.index;
        const figure = found[0].slice(
          0,
          found[0].toLowerCase().indexOf(found[2]?.toLowerCase() ?? "") + (found[2]?.length ?? 0),
        );
        return [
          makeFinding(
            "amount-beyond-list",
            dish.source,
            { start, end: start + figure.length },
            { name: line.name, stated: figure, listed: listed.words },
            {
              related: [{ source: dish.source, span: line.span }],
              fixes: [
                {
                  kind: "correct-amount",
                  edits: [replaceWords({ start, end: start + figure.length }, listed.words)],
                },
              ],
            },
          ),
        ];
      }),
    ),
  ],
};

const counted = /(?<![\d/⁄.,])\b(\d{1,3})\s+of\s+(?:the|your)\s+([\p{L} -]{2,40})/giu;

/** More pieces than the list has: "12 of the pears" of six. */
const countBeyond = (dish: Dish, step: Step): readonly Finding[] =>
  [...step.text.matchAll(counted)].flatMap((found) => {
    const [line, other] = linesOf(dish, (found[2] ?? "").toLowerCase());
    const own = line?.amounts.find((a) => a.unit === "piece");
    if (line === undefined || other !== undefined || own === undefined || Number(found[1]) <= own.high)
      return [];
    const start = step.span.start + found.index;
    const span = { start, end: start + (found[1]?.length ?? 0) };
    return [
      makeFinding(
        "amount-beyond-list",
        dish.source,
        span,
        { name: line.name, stated: found[1] ?? "", listed: String(own.likely) },
        {
          related: [{ source: dish.source, span: line.span }],
          fixes: [{ kind: "correct-amount", edits: [replaceWords(span, String(own.likely))] }],
        },
      ),
    ];
  });

const pieces =
  /\b(\d{1,3})\s+(?:(?:equal|small|large|even|flat|round|neat)\s+)*(balls?|patties|burgers|cakes|fishcakes|pieces|portions|rolls|buns|loaves|sausages|dumplings|cutlets)\s+of\s+(?:about\s+|roughly\s+)?(\d{1,4})\s?g\b/gi;
/** What goes in may weigh this much more than is known of it: water, and lines without a weight. Common practice, no source. */
const heavier = 1.3;

/** So many pieces of so much weigh more than all that goes in: "16 patties of 150 g" of a kilo of mince. */
const piecesBeyond = (dish: Dish, step: Step): readonly Finding[] =>
  [...step.text.matchAll(pieces)].flatMap((found) => {
    const [words, many, noun = "", each] = found;
    const start = step.span.start + found.index;
    const shaped = placedActions(dish).find(
      ({ action }) => action.span.start <= start && action.span.end > start,
    );
    const lines = dish.ingredients.filter(
      (i) => !i.equipment && shaped !== undefined && worksOn(dish, shaped, i.index),
    );
    const all = lines.reduce((sum, i) => sum + gramsOf(i), 0);
    if (lines.some((i) => gramsOf(i) === 0 && i.amounts.length > 0) || all <= 0) return [];
    if (Number(many) * Number(each) <= all * heavier) return [];
    return [
      makeFinding(
        "amount-beyond-list",
        dish.source,
        { start, end: start + words.length },
        { name: noun, stated: `${many} × ${each} g`, listed: `${Math.round(all)} g` },
        {},
      ),
    ];
  });

const fractions: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 1 / 8,
};

const inWords: Readonly<Record<string, number>> = {
  half: 1 / 2,
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};

/** "1 1/2", "½", "2,5", "two", "half a" as a number. */
const numberOf = (words: string): number =>
  inWords[words.toLowerCase().split(/\s/)[0] ?? ""] ??
  words
    .trim()
    .split(/\s+|(?=[½¼¾⅓⅔⅛])/)
    .reduce((sum, part) => {
      const [top = "", under] = part.split(/[/⁄]/);
      return (
        sum + (fractions[part] ?? Number(top.replace(",", ".")) / (under === undefined ? 1 : Number(under)))
      );
    }, 0);

const headOf = (i: Ingredient): string =>
  stem(
    i.name
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .findLast((w) => w.length > 2) ?? "",
  );

/** The lines that the words behind a figure may name; none when that is not to be told. */
const linesOf = (dish: Dish, words: string): readonly Ingredient[] => {
  // "200 ml water and the butter": the first food is the one.
  const own = (words.split(/\b(?:and|with|to|into|in|over|until|for|from|at|then)\b/)[0] ?? "")
    .split(/[^\p{L}]+/u)
    .filter((w) => w.length > 2)
    .map(stem);
  const lines = dish.ingredients.filter((i) => !i.equipment && own.includes(headOf(i)));
  const meant = lines.length === 0 ? kindOf(dish, words) : lines;
  const foods = new Set(meant.map((i) => i.food));
  const same = dish.ingredients.filter((i) => i.food !== null && foods.has(i.food)).length;
  return same > meant.length || meant.some((i) => /\bplus|\bextra\b|\bmore\b/i.test(i.text)) ? [] : meant;
};

/** What several lines of one name hold together; null when that of any is not known. */
const mostOfAll = (
  lines: readonly Ingredient[],
  kind: Size["kind"],
): { readonly most: number; readonly words: string } | null => {
  const each = lines.map((line) => mostOf(line, kind));
  const words = each.map((e) => e?.words ?? "").join(" and ");
  return each.reduce<{ most: number; words: string } | null>(
    (sum, e) => (sum === null || e === null ? null : { most: sum.most + e.most, words }),
    { most: 0, words },
  );
};

/** "The cheese" where Cheddar is listed, and no other cheese. */
const kindOf = (dish: Dish, words: string): readonly Ingredient[] => {
  const tokens = tokenise(words);
  const candidates = nameAt(tokens, 0, nameIndexOf(dish.ingredients))?.candidates ?? [];
  return candidates.length === 1 ? candidates.flatMap((c) => dish.ingredients[c.ingredient] ?? []) : [];
};

/** The most that a line may be said to hold, in grams or millilitres, and its own words for it. */
const mostOf = (
  line: Ingredient,
  kind: Size["kind"],
): { readonly most: number; readonly words: string } | null => {
  const sizeOf = (a: Amount): Size | undefined => (a.unit === null ? undefined : sizes[a.unit]);
  const own = line.amounts.find((a) => sizeOf(a)?.kind === kind);
  const size = own === undefined ? undefined : sizeOf(own);
  if (own !== undefined && size !== undefined)
    return {
      most: own.high * size.size * (own.approximate || own.vague ? rough : tolerance),
      words: `${own.likely} ${own.unit}`,
    };
  // Pieces and spoons have a usual weight.
  if (kind !== "mass" || line.grams === null || line.gramsBasis === "vague") return null;
  return { most: line.grams.high * rough, words: `${Math.round(line.grams.likely)} g` };
};
