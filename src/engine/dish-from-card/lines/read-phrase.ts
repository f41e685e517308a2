import { findFood } from "../../larder/foods.ts";
import { findSize, measureKind } from "../../larder/measures.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span } from "../../model/span.ts";
import { type FoodMatch, findFoodIn, findTurned } from "./find-food.ts";
import {
  bareAdjectives,
  equipmentWords,
  formWords,
  isDoneWord,
  portionWords,
  preparationWords,
  qualityWords,
  stateWords,
  tailWords,
} from "./line-words.ts";
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

/** The words of the line from one token to another (excluded), as they stand. */
export const slice = (line: string, tokens: readonly Token[], from: number, to: number): string =>
  from >= to ? "" : line.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0);

const lowerAt = (tokens: readonly Token[], at: number): string => tokens[at]?.lower ?? "";

/** "juice of", "grated zest and juice of", "yolks of": the part asked for, and where what it is part of begins. */
const readPortion = (
  tokens: readonly Token[],
  at: number,
  end: number,
): { portion: string; preparation: string[]; next: number } | null => {
  let next = at;
  const preparation: string[] = [];
  while (
    ["the", "finely", "grated", "freshly", "squeezed", "fresh", "pared", "strained"].includes(
      lowerAt(tokens, next),
    )
  ) {
    if (preparationWords.has(lowerAt(tokens, next))) preparation.push(lowerAt(tokens, next));
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

const cardWords = new Set(["batch", "serving"]);

const isModifier = (token: Token | undefined): boolean =>
  token !== undefined &&
  (isParticiple(token) ||
    qualityWords.has(token.lower) ||
    bareAdjectives.has(token.lower) ||
    findSize(token.lower) !== null ||
    isAdverb(token));

const nameMarks = new Set(["-", "&", "'", "\u2019", ".", "%", "*"]);

const endsAtMark = (tokens: readonly Token[], at: number, end: number): boolean => {
  const token = tokens[at];
  if (token?.kind !== "mark") return false;
  if (!nameMarks.has(token.text)) return true;
  if (token.text === "-") return token.start > (tokens[at - 1]?.end ?? 0);
  return token.text === "." && at + 1 < end && (tokens[at + 1]?.start ?? 0) > token.end;
};

/** The end of the name: the first word that begins a tail, once something has been named. */
const nameEnd = (tokens: readonly Token[], from: number, end: number): number => {
  let named = false;
  for (let i = from; i < end; i += 1) {
    const token = tokens[i];
    if (token === undefined) break;
    if (endsAtMark(tokens, i, end)) return i;
    if (token.kind === "number" && i > from && tokens[i + 1]?.text !== "%")
      return !named && lowerAt(tokens, i - 1) === "or" ? i - 1 : i;
    if (token.kind === "word" && i > from) {
      const { lower } = token;
      const joint = lower === "or" || lower === "and" || lower === "cut";
      if (lower === "and" && isParticiple(tokens[i - 1]) && leadsToParticiple(tokens, i + 1, end)) continue;
      if (named && lower === "and") return i;
      if (lower === "of" && ["any", "your", "choice", "some"].includes(lowerAt(tokens, i + 1))) return i;
      if (!joint && tailWords.has(lower) && !(lower === "mixed" && !named)) return i;
      if (named && joint && (lower !== "cut" || lowerAt(tokens, i + 1) !== "")) return i;
    }
    if (token.text === "&" && named) return i;
    if (token.kind === "word" && !isModifier(token) && !["or", "and"].includes(token.lower)) named = true;
  }
  return end;
};

const isParticiple = (token: Token | undefined): boolean =>
  token !== undefined && (preparationWords.has(token.lower) || stateWords.has(token.lower));

const leadsToParticiple = (tokens: readonly Token[], at: number, end: number): boolean => {
  for (let i = at; i < Math.min(end, at + 3); i += 1) {
    if (isParticiple(tokens[i])) return true;
    if (!qualityWords.has(lowerAt(tokens, i)) && !/ly$/.test(lowerAt(tokens, i))) return false;
  }
  return false;
};

const isAdverb = (token: Token | undefined): boolean =>
  token?.kind === "word" && (/ly$/.test(token.lower) || ["very", "quite", "well"].includes(token.lower));

/** What stands before the food's name: sizes, states, preparations; where the name proper begins. */
const readModifiers = (
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
    } else if (qualityWords.has(lower) || (token.kind === "mark" && token.text !== "%") || lower === "and")
      at += 1;
    else break;
  }
  return { start: at, size, state, preparation };
};

const isDashSized = (tokens: readonly Token[], at: number): boolean =>
  lowerAt(tokens, at + 1) === "-" && lowerAt(tokens, at + 2) === "sized";

/** The food's own words may begin with what was done to it ("beaten egg"): taken off when the food stays the same. */
const ownModifiers = (
  line: string,
  tokens: readonly Token[],
  match: { food: Food; from: number; to: number },
): { start: number; size: string | null; state: string[]; preparation: string[] } => {
  const read = readModifiers(line, tokens, match.from, match.to);
  for (let start = read.start; start > match.from; start -= 1)
    if (
      tokens
        .slice(match.from, start)
        .every((t) => t.kind !== "word" || isParticiple(t) || isAdverb(t) || findSize(t.lower) !== null) &&
      findFood(slice(line, tokens, start, match.to))?.id === match.food.id
    )
      return { ...readModifiers(line, tokens, match.from, start + 1), start };
  // "frozen peas" keep their name, and are still frozen.
  return {
    start: match.from,
    size: null,
    state: read.state.filter((s) => s === "frozen" || s === "cooked"),
    preparation: [],
  };
};

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

/** "2 leaves of gelatine" are leaf gelatine, "1 stick of cinnamon" is a cinnamon stick; "1 chopped tomato" is in no tin. */
const asCounted = (
  line: string,
  tokens: readonly Token[],
  match: FoodMatch | null,
  amounts: readonly Amount[],
): FoodMatch | null => {
  const unit = amounts[0]?.unit ?? null;
  if (match === null || unit === null) return match;
  const name = slice(line, tokens, match.from, match.to);
  if (unit === "piece" && match.food.id.startsWith("tinned-") && amounts.length === 1) {
    const { start } = readModifiers(line, tokens, match.from, match.to);
    const fresh = start > match.from ? findFood(slice(line, tokens, start, match.to)) : null;
    return fresh === null ? match : { food: fresh, from: start, to: match.to };
  }
  if (unit === "piece" || measureKind(unit) !== "piece") return match;
  const food = findFood(`${unit} ${name}`) ?? findFood(`${name} ${unit}`);
  return food === null ? match : { ...match, food };
};

/** A name across "of" ("cream of tartar") before one turned round ("lamb leg"), before the food after it. */
const chooseMatch = (tokens: readonly Token[], from: number, to: number): FoodMatch | null => {
  const plain = findFoodIn(tokens, from, to);
  if (plain !== null && tokens.slice(plain.from, plain.to).some((t) => t.lower === "of")) return plain;
  return findTurned(tokens, from, to) ?? plain;
};

/** True when the tokens hold no noun, only what could stand before one ("bone-in", "stewed and strained"). */
export const isOnlyModifiers = (tokens: readonly Token[], from: number): boolean =>
  tokens
    .slice(from)
    .every((t) => t.kind !== "word" || isModifier(t) || t.lower === "and" || t.lower === "or");

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
  match = asCounted(line, tokens, match, amounts);
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
  const name = slice(line, tokens, nameFrom, nameTo);
  if (only?.unit === "batch" || cardWords.has(only?.unit ?? "")) card = name;
  const egg = match?.food.id === "egg-yolk" ? "yolk" : match?.food.id === "egg-white" ? "white" : null;
  const named = tokens.slice(at, stop);
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
    nameSpan: { start: tokens[nameFrom]?.start ?? 0, end: tokens[nameTo - 1]?.end ?? 0 },
    portion: portion ?? egg,
    preparation: [...preparation, ...lead.preparation, ...(own?.preparation ?? []), ...tail.preparation],
    state: [...lead.state, ...(own?.state ?? []), ...tail.state],
    equipment: match === null && named.some((t) => equipmentWords.has(t.lower)),
    card,
    next: Math.max(stop, match?.to ?? 0),
  };
};

/** An unknown name ends before what is done to it. */
const lastName = (tokens: readonly Token[], from: number, to: number): number => {
  let end = to;
  while (
    end > from + 1 &&
    (isParticiple(tokens[end - 1]) || isAdverb(tokens[end - 1]) || tokens[end - 1]?.kind === "mark")
  )
    end -= 1;
  return end;
};
