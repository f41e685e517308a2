import { findFood, firstOfFoodNames, foodOfKey, hasOwnFoods } from "../../larder/foods.ts";
import { findSize, findUnit } from "../../larder/measures.ts";
import { normaliseName } from "../../larder/normalise-name.ts";
import { singularsOf } from "../../larder/plural.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Food } from "../../model/food.ts";
import {
  bareAdjectives,
  compoundHeads,
  formWords,
  isDoneWord,
  kindWords,
  otherFoodWords,
  preparationWords,
  qualityWords,
  stateWords,
  strangeHeads,
  tailWords,
} from "./line-words.ts";

/** A food found among tokens: from, to (excluded). */
export type FoodMatch = { readonly food: Food; readonly from: number; readonly to: number };

const mostWords = 6;

const keyed = (key: string): Food | null => {
  const exact = foodOfKey(key);
  if (exact !== null) return exact;
  for (const form of singularsOf(key)) {
    const food = foodOfKey(form);
    if (food !== null) return food;
  }
  return null;
};

/** The normalised words of tokens, one string each. Marks other than hyphens and ampersands break a name. */
const nameOf = (token: Token): string | null => {
  if (token.kind === "word") return normaliseName(token.text);
  if (token.kind === "mark" && ["-", "'", "\u2019"].includes(token.text)) return "";
  if (token.kind === "mark" && (token.text === "&" || token.text === "%"))
    return token.text === "&" ? "and" : "%";
  if (token.kind === "number") return token.text;
  return null;
};

/** "corn starch", "quails' eggs": written apart, or with a plural before the head, what the table writes plainly. */
const writtenOtherwise = (key: string): Food | null => {
  if (!key.includes(" ")) return null;
  const [first, second, third] = key.split(" ");
  if (first === undefined || second === undefined || third !== undefined) return null;
  const owner = first.replace(/'s$/, "");
  const single = owner !== first ? owner : (singularsOf(first)[0] ?? null);
  return keyed(`${first}${second}`) ?? (single === null ? null : keyed(`${single} ${second}`));
};

const writtenWords = 2;

const wordsIn = (key: string): number => {
  let words = 1;
  for (let at = key.indexOf(" "); at >= 0; at = key.indexOf(" ", at + 1)) words += 1;
  return words;
};

/** Every name of the food table among the tokens from `from` to `to`, where a name may end after `to`. */
const matchesIn = (tokens: readonly Token[], from: number, to: number): readonly FoodMatch[] => {
  const found: FoodMatch[] = [];
  const names = tokens.map(nameOf);
  // The names of a cook's own foods may begin with any word.
  const own = hasOwnFoods();
  for (let start = from; start < to; start += 1) {
    if (tokens[start]?.kind === "mark") continue;
    let key = "";
    const first = names[start]?.split(" ")[0] ?? "";
    // Behind two words ("corn starch") a name that is written otherwise is not looked for.
    const most = own ? mostWords : Math.max(writtenWords, firstOfFoodNames.get(first) ?? 0);
    for (let end = start; end < tokens.length && end < start + mostWords; end += 1) {
      const name = names[end];
      if (name == null || (end >= to && /^(?:for|to|or)$/.test(name))) break;
      key = name === "" || key === "" ? key + name : `${key} ${name}`;
      if (name === "") continue;
      if (wordsIn(key) > most) break;
      const food = keyed(key) ?? writtenOtherwise(key);
      if (food !== null) found.push({ food, from: start, to: end + 1 });
    }
  }
  return found;
};

const isFiller = (token: Token | undefined): boolean => {
  if (token === undefined) return true;
  if (token.kind !== "word") return true;
  const { lower } = token;
  return (
    formWords.has(lower) ||
    preparationWords.has(lower) ||
    stateWords.has(lower) ||
    qualityWords.has(lower) ||
    /^(?:and|then|also|up|off|out|ly)$|ly$/.test(lower)
  );
};

/** The last token before `to` that could be the head of the name: fillers after the food are passed over. */
const headOf = (tokens: readonly Token[], from: number, to: number): number => {
  let head = to - 1;
  while (head > from && isFiller(tokens[head])) head -= 1;
  return head;
};

const freeWords = /^(?:gluten|wheat|dairy|lactose|egg|nut|sugar|meat|alcohol)free$/;

/** "xilbeno butter": an unknown word in front of a head makes a food of its own; a name of a place does not. */
const isUnknownKind = (before: Token, head: Token | undefined): boolean => {
  const proper = /^\p{Lu}/u.test(before.text) && !/^\p{Lu}/u.test(head?.text ?? "");
  return (
    !proper &&
    !tailWords.has(before.lower) &&
    !/^(?:or|and|but)$/.test(before.lower) &&
    strangeHeads.has(head?.lower ?? "") &&
    !isFiller(before) &&
    !bareAdjectives.has(before.lower) &&
    !isDoneWord(before.lower) &&
    findSize(before.lower) === null &&
    findUnit(before.text) === null &&
    !/(?:ish|an|ese|ed|y|ing|ic|al|ful)$/.test(before.lower)
  );
};

const isOtherFood = (tokens: readonly Token[], from: number, match: FoodMatch): boolean => {
  for (let i = from; i < match.from; i += 1) {
    const word = tokens[i]?.lower ?? "";
    if (otherFoodWords.has(word) || freeWords.test(word)) return true;
    if (tokens[i + 1]?.lower === "free" && otherFoodWords.has(`${word}-free`)) return true;
  }
  for (let i = match.to; i < Math.min(tokens.length, match.to + 1); i += 1) {
    const word = tokens[i]?.lower ?? "";
    if (/^(?:substitute|alternative|replacement|flavou?r(?:ed|ing)?|free|extract|essence)$/.test(word))
      return true;
  }
  const before = tokens[match.from - 1];
  const single = match.to - match.from === 1;
  if (
    single &&
    before?.kind === "word" &&
    before.lower !== "fat" &&
    compoundHeads.has(tokens[match.from]?.lower ?? "")
  ) {
    const modifier = findFood(before.text);
    if (modifier === null && match.from - 1 >= from && isUnknownKind(before, tokens[match.from])) return true;
    if (modifier !== null && modifier.id !== match.food.id && !isFiller(before)) return true;
  }
  return false;
};

/** "Tabasco sauce", "ciabatta bread": the head says only what kind of thing the food before it is. */
const ofItsKind = (
  matches: readonly FoodMatch[],
  tokens: readonly Token[],
  head: number,
): FoodMatch | null => {
  const shelves = kindWords.get(tokens[head]?.lower ?? "");
  if (shelves === undefined) return null;
  const before = matches.filter((m) => m.to === head && shelves.has(m.food.shelf));
  const longest = before.find((m) => before.every((o) => o.to - o.from <= m.to - m.from));
  const plain = longest !== undefined && /milk|cream$|butter|yogurt|egg/.test(longest.food.id);
  return longest === undefined || plain ? null : { ...longest, to: head + 1 };
};

/**
 * The food that tokens name: the longest name of the table that ends at the head of the phrase ("tomato paste", not
 * "tomato"). Words before it may be of any kind, but not such as make another food of it ("vegan butter"). Null for none.
 */
export const findFoodIn = (tokens: readonly Token[], from: number, to: number): FoodMatch | null => {
  const matches = matchesIn(tokens, from, to);
  if (matches.length === 0) return null;
  const head = headOf(tokens, from, to);
  let best: FoodMatch | null = null;
  for (const match of matches) {
    if (match.to <= head) continue;
    if (best === null || match.to - match.from >= best.to - best.from) best = match;
  }
  best ??= ofItsKind(matches, tokens, head);
  if (best === null) return null;
  return isOtherFood(tokens, from, best) ? null : best;
};

const longestPart = 2;
const longestWhole = 4;

/** "leg of lamb": the table may have it the other way round ("lamb leg"). Only the words next to the first "of" are tried. */
export const findTurned = (tokens: readonly Token[], from: number, to: number): FoodMatch | null => {
  const of = tokens.findIndex((t, i) => i > from && i < to - 1 && t.lower === "of");
  if (of < 0) return null;
  const words = (start: number, end: number): string =>
    tokens
      .slice(start, end)
      .filter((t) => !/^(?:the|a|an)$/.test(t.lower))
      .map((t) => t.text)
      .join(" ");
  for (let start = Math.max(from, of - longestPart); start < of; start += 1)
    for (let end = Math.min(to, of + 1 + longestWhole); end > of + 1; end -= 1) {
      const food = findFood(`${words(of + 1, end)} ${words(start, of)}`);
      if (food !== null) return { food, from: start, to: end };
    }
  return null;
};
