import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import { nameAt } from "../steps/find-mentions.ts";
import { type NameIndex, nameIndexOf } from "../steps/name-index.ts";
import { numberAt } from "../steps/number-at.ts";
import { type Token, tokenise } from "../steps/tokens.ts";
import type { Rule } from "./rule.ts";

/** How far the amounts may be off before the ratio is said to be broken. Common practice, no source. */
const tolerance = 0.15;

type Term = { readonly value: number; readonly ingredient: number; readonly to: number };

/** A ratio that the cook states ("two of stock to one of lentils") and that the amounts of the list do not keep. */
export const ratioBroken: Rule = {
  code: "ratio-broken",
  check: (dish) => {
    const all = nameIndexOf(dish.ingredients);
    return linesWithRatio(dish.text).flatMap(({ line, start }) => {
      const tokens = tokenise(line);
      // A line that states the ratio alone may have been read as one of the list.
      const isSaid = (i: Ingredient): boolean =>
        i.amounts.some((a) => a.unit === "part") &&
        i.span.start >= start &&
        i.span.end <= start + line.length;
      const own = dish.ingredients.filter(isSaid);
      const names = own.length === 0 ? all : nameIndexOf(dish.ingredients.filter((i) => !isSaid(i)));
      return tokens.flatMap((token, i) => {
        const pair =
          partsAt(tokens, i, names) ??
          toAt(tokens, i, names) ??
          muchAt(tokens, i, names) ??
          equalAt(tokens, i, names, dish);
        const pairs = pair === null ? colonsAt(tokens, i, names) : [pair];
        return pairs.flatMap(([first, second]) => {
          if (second.ingredient === first.ingredient || second.value <= 0) return [];
          const stated = first.value / second.value;
          const a = dish.ingredients[first.ingredient];
          const b = dish.ingredients[second.ingredient];
          const found = a === undefined || b === undefined ? [] : ratiosOf(a, b);
          if (a === undefined || b === undefined || found.length === 0) return [];
          const nearest = found.reduce((x, y) => (off(y, stated) < off(x, stated) ? y : x));
          if (off(nearest, stated) <= tolerance) return [];
          const end = tokens[second.to - 1]?.end ?? token.end;
          const span = { start: start + token.at, end: start + end };
          return [
            makeFinding(
              "ratio-broken",
              dish.source,
              span,
              { first: a.name, second: b.name, stated: round(stated), found: round(nearest) },
              { related: [a, b].map((x) => ({ source: dish.source, span: x.span })) },
            ),
          ];
        });
      });
    });
  },
};

// As much of a text as any card has; the rest of ten megabytes is not searched.
const searched = 60_000;
// "Twice as much stock as rice", "equal weights of butter and flour".
const comparing = /\bas much\b|\b(?:equal|same) (?:weights?|parts?|amounts?|quantit(?:y|ies)|volumes?)\b/i;
const swapping = /\b(?:instead|replace|swap|substitute|without)\b/i;
const ratioWords = /\b(?:of|parts?|measures?|volumes?|times)\b/i;

const toOne = /\b(?:\d+|one|two|three|four|five|six|ten) to (?:\d+|one|two|three)\b[^.]*\b(?:to|and)\b/i;

/** The lines that might state a ratio, wherever they stand on the card. */
const linesWithRatio = (text: string): readonly { readonly line: string; readonly start: number }[] => {
  let start = 0;
  return text
    .slice(0, searched)
    .split("\n")
    .map((line) => {
      const from = start;
      start += line.length + 1;
      return { line, start: from };
    })
    .filter(
      ({ line }) =>
        ((line.includes(" to ") && (ratioWords.test(line) || toOne.test(line))) ||
          comparing.test(line) ||
          /\d\s*:\s*\d/.test(line)) &&
        !swapping.test(line),
    );
};

const round = (x: number): number => Math.round(x * 100) / 100;
const off = (found: number, stated: number): number => Math.abs(Math.log(found / stated));

type Pair = readonly [Term, Term];

/** "Two of stock to one of lentils". */
const partsAt = (tokens: readonly Token[], i: number, names: NameIndex): Pair | null => {
  const first = termAt(tokens, i, names);
  const between = tokens[first?.to ?? i]?.text ?? "";
  const inParts =
    /^(?:,|and)$/.test(between) &&
    /^(?:parts?|measures?|volumes?)$/.test(tokens[numberAt(tokens, i)?.next ?? i]?.text ?? "");
  if (first === null || (between !== "to" && !inParts)) return null;
  const second = termAt(tokens, first.to + 1, names);
  return second === null ? null : [first, second];
};

/** "Two to one wine to water", "3 to 1 oil and vinegar". */
const toAt = (tokens: readonly Token[], i: number, names: NameIndex): Pair | null => {
  const text = (k: number): string => tokens[k]?.text ?? "";
  const a = numberAt(tokens, i);
  if (a === null || text(a.next) !== "to") return null;
  const b = numberAt(tokens, a.next + 1);
  if (b === null || a.value > 20 || b.value > 20) return null;
  let at = b.next;
  while (/^(?:ratio|mix|of|by|weight|volume|in|[(),:–-])$/.test(text(at))) at += 1;
  const first = named(tokens, at, a.value, names);
  if (first === null || !/^(?:to|and|:)$/.test(text(first.to))) return null;
  const second = named(tokens, first.to + 1, b.value, names);
  return second === null ? null : [first, second];
};

const named = (tokens: readonly Token[], i: number, value: number, names: NameIndex): Term | null => {
  const at = tokens[i]?.text === "the" ? i + 1 : i;
  const hit = nameAt(tokens, at, names);
  const ingredient = hit?.candidates[0]?.ingredient;
  return hit === null || ingredient === undefined ? null : { value, ingredient, to: hit.to };
};

/** "Twice as much stock as rice", "three times as much milk as cream"; with no figure before it, as much is meant. */
const muchAt = (tokens: readonly Token[], i: number, names: NameIndex): Pair | null => {
  const text = (k: number): string => tokens[k]?.text ?? "";
  let at = i;
  let value = 1;
  const times = numberAt(tokens, i);
  if (/^(?:twice|double)$/.test(text(i))) [value, at] = [2, i + 1];
  else if (text(i) === "half") [value, at] = [1 / 2, i + 1];
  else if (times !== null && text(times.next) === "times") [value, at] = [times.value, times.next + 1];
  else if (!/^(?:want|need|use|take|put)$/.test(text(i - 1))) return null;
  if (text(at) !== "as" || text(at + 1) !== "much") return null;
  const first = named(tokens, at + 2, value, names);
  if (first === null || text(first.to) !== "as") return null;
  const second = named(tokens, first.to + 1, 1, names);
  return second === null ? null : [first, second];
};

/** "Equal weights of butter and flour", "the same amount of sugar as fruit". */
const equalAt = (tokens: readonly Token[], i: number, names: NameIndex, dish: Dish): Pair | null => {
  const text = (k: number): string => tokens[k]?.text ?? "";
  if (!/^(?:equal|same)$/.test(text(i)) || !/^(?:weight|part|amount|quantit|volume)/.test(text(i + 1)))
    return null;
  const at = text(i + 2) === "of" ? i + 3 : i + 2;
  const first = named(tokens, at, 1, names) ?? fruitAt(tokens, at, dish);
  if (first === null || !/^(?:and|as|to)$/.test(text(first.to))) return null;
  const second = named(tokens, first.to + 1, 1, names);
  return second === null ? null : [first, second];
};

/** "Fruit" where no line is called so: the line of fruit that weighs most. */
const fruitAt = (tokens: readonly Token[], i: number, dish: Dish): Term | null => {
  const at = tokens[i]?.text === "the" ? i + 1 : i;
  if (!/^fruits?$/.test(tokens[at]?.text ?? "")) return null;
  const [most] = dish.ingredients
    .filter((x) => x.food !== null && foodById(x.food)?.shelf === "fruit" && x.grams !== null)
    .toSorted((a, b) => (b.grams?.likely ?? 0) - (a.grams?.likely ?? 0));
  return most === undefined ? null : { value: 1, ingredient: most.index, to: at + 1 };
};

/** "3 : 2 : 1 of flour, butter and sugar": each figure against the one behind it, when every one has its food. */
const colonsAt = (tokens: readonly Token[], i: number, names: NameIndex): readonly Pair[] => {
  const text = (k: number): string => tokens[k]?.text ?? "";
  if (text(i - 1) === ":") return [];
  const values: number[] = [];
  let at = i;
  for (;;) {
    const n = numberAt(tokens, at);
    if (n === null) break;
    values.push(n.value);
    at = n.next;
    if (text(at) !== ":") break;
    at += 1;
  }
  if (values.length < 2) return [];
  while (/^(?:ratio|of|by|weight|for|in|mix|[(),–-])$/.test(text(at))) at += 1;
  const terms: Term[] = [];
  for (const value of values) {
    const term = named(tokens, at, value, names);
    if (term === null) return [];
    terms.push(term);
    at = term.to;
    while (/^(?:,|and|to|:)$/.test(text(at))) at += 1;
  }
  return terms.slice(1).flatMap((second, k): readonly Pair[] => {
    const first = terms[k];
    return first === undefined ? [] : [[first, second]];
  });
};

/** "two of stock", "1 part of lentils", "2 parts water". */
const termAt = (tokens: readonly Token[], i: number, names: NameIndex): Term | null => {
  const n = numberAt(tokens, i);
  if (n === null || n.value <= 0 || n.value > 100) return null;
  let at = n.next;
  const part = /^(parts?|measures?|volumes?|times)$/.test(tokens[at]?.text ?? "");
  if (part) at += 1;
  const of = tokens[at]?.text === "of";
  if (of) at += 1;
  if (!part && !of) return null;
  if (tokens[at]?.text === "the") at += 1;
  const hit = nameAt(tokens, at, names);
  const ingredient = hit?.candidates[0]?.ingredient;
  return hit === null || ingredient === undefined ? null : { value: n.value, ingredient, to: hit.to };
};

/** Every way the list's amounts can be compared: by weight, by volume, by the unit both lines are written in. */
const ratiosOf = (a: Ingredient, b: Ingredient): readonly number[] => {
  const ratios: number[] = [];
  for (const x of a.amounts)
    for (const y of b.amounts)
      if (x.unit !== null && x.unit === y.unit && y.likely > 0) ratios.push(x.likely / y.likely);
  if (a.grams !== null && b.grams !== null && b.grams.likely > 0 && a.grams.likely > 0) {
    const weight = a.grams.likely / b.grams.likely;
    ratios.push(weight);
    const da = a.food === null ? null : (foodById(a.food)?.density ?? null);
    const db = b.food === null ? null : (foodById(b.food)?.density ?? null);
    if (da !== null && db !== null && da > 0 && db > 0) ratios.push((weight * db) / da);
  }
  return ratios.filter((r) => r > 0 && Number.isFinite(r));
};
