import { findFood } from "../../larder/foods.ts";
import { measureKind } from "../../larder/measures.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span } from "../../model/span.ts";
import { asCounted, chooseMatch, ownModifiers, withoutChoice } from "./choose-match.ts";
import { equipmentWords, formWords, portionWords, preparationWords, stateWords } from "./line-words.ts";
import { isAdverb, lowerAt, readModifiers, slice } from "./modifiers.ts";
import { lastName, nameEnd } from "./name-end.ts";
import { readAmounts } from "./read-amounts.ts";

/** A phrase of a line: amounts and a food with what is said of it, and where its name ends. Spans count from the line's start. */
export type Phrase = {
  readonly amounts: readonly Amount[];
  readonly each: boolean;
  readonly size: string | null;
  readonly container: string | null;
  readonly pack: Amount | null;
  readonly level: string | null;
  /** Something was done to the food before it is weighed ("500 g peeled potatoes"). */
  readonly prepared: boolean;
  readonly food: Food | null;
  readonly name: string;
  readonly nameSpan: Span;
  readonly portion: string | null;
  readonly preparation: readonly string[];
  readonly state: readonly string[];
  readonly equipment: boolean;
  /** Another card's title, when the line asks for a quantity of it. */
  readonly card: string | null;
  /** Token where the name and what is done to it ends; the rest is a tail. */
  readonly next: number;
};

/** "juice of", "grated zest and juice of", "yolks of": the part asked for, and where what it is part of begins. */
const readPortion = (
  tokens: readonly Token[],
  at: number,
  end: number,
): { portion: string; preparation: string[]; next: number } | null => {
  let next = at;
  let adverb: string | null = null;
  const preparation: string[] = [];
  while (
    ["the", "finely", "grated", "freshly", "squeezed", "fresh", "pared", "strained"].includes(
      lowerAt(tokens, next),
    )
  ) {
    const word = lowerAt(tokens, next);
    if (isAdverb(tokens[next])) adverb = word;
    else if (preparationWords.has(word)) {
      preparation.push(adverb === null ? word : `${adverb} ${word}`);
      adverb = null;
    }
    next += 1;
  }
  const first = portionWords.get(lowerAt(tokens, next));
  if (first === undefined || next >= end) return null;
  const found = [first];
  next += 1;
  if (["and", "&", "or", "+"].includes(lowerAt(tokens, next))) {
    let second = next + 1;
    while (["grated", "finely", "the"].includes(lowerAt(tokens, second))) second += 1;
    const other = portionWords.get(lowerAt(tokens, second));
    if (other !== undefined) {
      found.push(other);
      next = second + 1;
    }
  }
  const of = ["of", "from"].includes(lowerAt(tokens, next));
  const counted =
    tokens[next]?.kind === "number" || /^(?:an?|one|two|three|four|half)$/.test(lowerAt(tokens, next));
  if (!of && !counted) return null;
  return { portion: found.join(" and "), preparation, next: of ? next + 1 : next };
};

// Bags that hold food while it is worked on; a bag of anything else holds what is bought.
const kitchenBag = /\b(?:piping|icing|freezer|sandwich|oven|roasting|vacuum|jelly) bags?$/i;

const cardWords = new Set(["batch", "serving"]);

const trailing = (
  line: string,
  tokens: readonly Token[],
  from: number,
  end: number,
): { nameTo: number; preparation: string[]; state: string[] } => {
  let at = from;
  while (
    at < end &&
    tokens[at]?.kind === "word" &&
    formWords.has(lowerAt(tokens, at)) &&
    !preparationWords.has(lowerAt(tokens, at))
  )
    at += 1;
  const nameTo = at;
  const preparation: string[] = [];
  const state: string[] = [];
  let begin = at;
  while (begin < end && tokens[begin]?.kind === "mark") begin += 1;
  if (begin < end) {
    const words = slice(line, tokens, begin, end);
    const lower = words.toLowerCase();
    if (tokens.slice(begin, end).every((t) => stateWords.has(t.lower) || isAdverb(t))) state.push(lower);
    else if (tokens.slice(begin, end).some((t) => preparationWords.has(t.lower))) preparation.push(lower);
  }
  return { nameTo, preparation, state };
};

/** "'00' flour": a name that holds a closing quote begins at the opening one. */
const withQuote = (line: string, start: number, end: number): number =>
  /['"\u2018\u201c\u00ab]/.test(line[start - 1] ?? "") &&
  /^[^\s'"]+['"\u2019\u201d\u00bb]/.test(line.slice(start, end))
    ? start - 1
    : start;

/** Reads the phrase that begins at a token and ends before another. Null when it holds no words for a food. */
export const readPhrase = (
  line: string,
  tokens: readonly Token[],
  from: number,
  end: number,
  region: Region,
): Phrase | null => {
  let at = from;
  let portion: string | null = null;
  const preparation: string[] = [];
  let read = readAmounts(tokens.slice(0, end), at, region);
  if (read !== null) at = read.next;
  const skip = (): void => {
    while (
      at < end &&
      (["of", "the", "your"].includes(lowerAt(tokens, at)) ||
        (tokens[at]?.kind === "mark" && tokens[at]?.text !== "%"))
    )
      at += 1;
  };
  const beforeSkip = at;
  skip();
  const part = readPortion(tokens, at, end);
  if (part !== null) {
    portion = part.portion;
    preparation.push(...part.preparation);
    at = part.next;
    const inner = readAmounts(tokens.slice(0, end), at, region);
    if (inner !== null) {
      if (read === null || read.amounts.every((a) => a.unit === "piece")) read = inner;
      at = inner.next;
    }
    skip();
  }
  let amounts = read?.amounts ?? [];
  let card: string | null = null;
  const only = amounts.length === 1 ? amounts[0] : undefined;
  // "3 cloves", "1 loaf, sliced": nothing follows, so the word of the unit is the food.
  const kind = only?.unit == null ? null : measureKind(only.unit);
  const bareUnit = kind === "piece" || kind === "container";
  if (
    only !== undefined &&
    bareUnit &&
    only.unit !== "piece" &&
    nameEnd(tokens, at, end) <= at &&
    read?.pack === null
  ) {
    const back = Math.max(from, beforeSkip - 1);
    amounts = [{ ...only, unit: "piece" }];
    at = lowerAt(tokens, back) === "of" ? Math.max(from, back - 1) : back;
    read = { ...read, container: null } as typeof read;
  }
  // "10 small or 5 big mushrooms": the food is told with the second amount.
  const unsaid = lowerAt(tokens, at) === "or" && amounts.length > 0;
  if (at >= end || unsaid) {
    if (amounts.length === 0) return null;
    const place = tokens[end - 1]?.end ?? 0;
    return {
      amounts,
      each: read?.each ?? false,
      size: read?.size ?? null,
      container: read?.container ?? null,
      pack: read?.pack ?? null,
      level: read?.level ?? null,
      prepared: false,
      food: null,
      name: "",
      nameSpan: { start: place, end: place },
      portion,
      preparation,
      state: [],
      equipment: false,
      card: null,
      next: unsaid ? at : end,
    };
  }
  const stop = Math.max(nameEnd(tokens, at, end), Math.min(at + 1, end));
  let match = chooseMatch(tokens.slice(0, end), at, stop);
  match = asCounted(line, tokens, withoutChoice(line, tokens, at, match), amounts);
  const canned = read?.container === "tin" || read?.container === "can";
  if (canned && match !== null) {
    const tinned =
      findFood(`tinned ${slice(line, tokens, match.from, match.to)}`) ??
      findFood(`canned ${slice(line, tokens, match.from, match.to)}`);
    if (tinned !== null) match = { ...match, food: tinned };
  }
  const lead = readModifiers(line, tokens, at, match === null ? stop : Math.max(at + 1, match.from + 1));
  const begin = match === null ? lead.start : Math.min(lead.start, match.from);
  const own = match === null ? null : ownModifiers(line, tokens, match);
  const nameFrom = own !== null && match !== null && begin >= match.from ? own.start : begin;
  const tail =
    match === null
      ? { nameTo: lastName(tokens, begin, stop), preparation: [], state: [] }
      : trailing(line, tokens, match.to, Math.max(stop, match.to));
  const nameTo = Math.max(tail.nameTo, nameFrom + 1);
  const nameStop = tokens[nameTo - 1]?.end ?? 0;
  const start = withQuote(line, tokens[nameFrom]?.start ?? 0, nameStop);
  const name = line.slice(start, nameStop);
  if (only?.unit === "batch" || cardWords.has(only?.unit ?? ""))
    card = slice(line, tokens, at, nameTo).replace(/^(?:(?:your|my|our|favou?rite|usual)\s+)+/i, "");
  // Ground is how a spice is sold, not what the cook does to it.
  const spice = match?.food.shelf === "spices";
  const done = [...lead.preparation, ...(own?.preparation ?? [])].filter((p) => !(spice && p === "ground"));
  const egg = match?.food.id === "egg-yolk" ? "yolk" : match?.food.id === "egg-white" ? "white" : null;
  const last =
    name
      .toLowerCase()
      .split(/[\s-]+/)
      .at(-1) ?? "";
  return {
    amounts,
    each: read?.each ?? false,
    size: read?.size ?? lead.size ?? own?.size ?? null,
    container: read?.container ?? null,
    pack: read?.pack ?? null,
    level: read?.level ?? null,
    prepared:
      lead.preparation.length > 0 || (own?.preparation.length ?? 0) > 0 || lead.state.includes("cooked"),
    food: match?.food ?? null,
    name,
    nameSpan: { start, end: nameStop },
    portion: portion ?? egg,
    preparation: [...preparation, ...done, ...tail.preparation],
    // A dry cider is a kind of cider.
    state: [...lead.state, ...(own?.state ?? []), ...tail.state].filter(
      (s) => !(s === "dry" && match?.food.shelf === "drinks"),
    ),
    equipment: match === null && (equipmentWords.has(last) || kitchenBag.test(name)),
    card,
    next: Math.max(stop, match?.to ?? 0),
  };
};
