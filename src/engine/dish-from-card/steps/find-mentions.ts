import type { Ingredient } from "../../model/dish.ts";
import { isTool } from "./find-details.ts";
import type { Named, NameIndex } from "./name-index.ts";
import { numberAt } from "./number-at.ts";
import { stem } from "./stem.ts";
import type { Token } from "./tokens.ts";

/** How much of a food the words take. */
type Portioning =
  | { readonly kind: "share"; readonly share: number }
  | { readonly kind: "rest" }
  /** "some", "a little": a part that no number states. */
  | { readonly kind: "some"; readonly little: boolean }
  | { readonly kind: "amount"; readonly value: number; readonly unit: string }
  /** Nothing is said: all that is left. */
  | { readonly kind: "plain" };

/** A listed ingredient in the words of a step. */
export type Mention = {
  readonly candidates: readonly Named[];
  readonly portioning: Portioning;
  readonly from: number;
  readonly to: number;
  /** The words ask for all lines that fit ("both sugars", "the flours"). */
  readonly every: boolean;
  /** One word in the plural: it may stand for several lines of that name. */
  readonly plural: boolean;
  /** The bare word "pepper", which means the spice. */
  readonly isPepper: boolean;
  /** A part of what a line lists whole ("the yolks" of eggs); null for all of it. */
  readonly portion: string | null;
};

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

const longestName = 5;

type Firsts = {
  /** First words of names, by their stems. */
  readonly stems: ReadonlySet<string>;
  /** Names that are meant only as they are written. */
  readonly written: ReadonlySet<string>;
};

const firsts = new WeakMap<NameIndex, Firsts>();

/** The words with which some name of an index begins: most words of a step begin none. */
const firstWords = (names: NameIndex): Firsts => {
  const known = firsts.get(names);
  if (known !== undefined) return known;
  const stems = new Set<string>();
  const written = new Set<string>();
  for (const key of names.keys()) {
    const end = key.indexOf(" ");
    const first = end < 0 ? key : key.slice(0, end);
    stems.add(first);
    if (first.startsWith("=")) written.add(first.slice(1));
  }
  const found = { stems, written };
  firsts.set(names, found);
  return found;
};

/** The listed names that start at a place, the longest first; null when none does. */
export const nameAt = (
  tokens: readonly Token[],
  i: number,
  names: NameIndex,
): { readonly candidates: readonly Named[]; readonly to: number } | null => {
  const opening = tokens[i];
  if (opening?.kind !== "word") return null;
  const { stems, written } = firstWords(names);
  if (
    !stems.has(opening.stem) &&
    !(written.size > 0 && written.has(opening.text)) &&
    !opening.text.includes("-")
  )
    return null;
  let key = "";
  let best: { candidates: readonly Named[]; to: number } | null = null;
  let at = i;
  for (let n = 0; n < longestName && tokens[at]?.kind === "word"; n += 1, at += 1) {
    const token = tokens[at];
    if (token === undefined) break;
    const words = token.text.includes("-") ? stemHyphens(token.text) : token.stem;
    key = n === 0 ? words : `${key} ${words}`;
    const found =
      names.get(key) ?? (n === 0 && written.has(token.text) ? names.get(`=${token.text}`) : undefined);
    if (found !== undefined) best = { candidates: found, to: at + 1 };
    if (word(tokens, at) === "of" && n === 0) return null;
  }
  return best;
};

const stemHyphens = (text: string): string =>
  text.includes("-") ? text.split("-").map(stem).join(" ") : stem(text);

const fractions: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 1 / 2,
    third: 1 / 3,
    thirds: 1 / 3,
    quarter: 1 / 4,
    quarters: 1 / 4,
    fifth: 1 / 5,
    fifths: 1 / 5,
    most: 0.75,
  }),
);

const unitWords: ReadonlyMap<string, string> = new Map(
  Object.entries({
    g: "g",
    gram: "g",
    grams: "g",
    gm: "g",
    kg: "kg",
    kilo: "kg",
    kilos: "kg",
    oz: "oz",
    ounce: "oz",
    ounces: "oz",
    lb: "lb",
    lbs: "lb",
    pound: "lb",
    pounds: "lb",
    ml: "ml",
    millilitres: "ml",
    milliliters: "ml",
    cl: "cl",
    dl: "dl",
    l: "l",
    litre: "l",
    litres: "l",
    liter: "l",
    liters: "l",
    tsp: "tsp",
    teaspoon: "tsp",
    teaspoons: "tsp",
    tbsp: "tbsp",
    tablespoon: "tbsp",
    tablespoons: "tbsp",
    tbs: "tbsp",
    cup: "cup",
    cups: "cup",
    pint: "pint",
    pints: "pint",
    quart: "quart",
    quarts: "quart",
  }),
);

const isSmall = (text: string): boolean =>
  /^(little|some|bit|splash|pinch|knob|drizzle|dash|few|touch|spoonful|handful|ladle|ladleful|ladlefuls|drop|drops|couple|sprinkle|sprinkling|dusting|spoon|bits|pinches|glug|slosh|dollop|smear)$/.test(
    text,
  );

const isLittle = (text: string): boolean =>
  /^(little|bit|splash|pinch|knob|drizzle|dash|touch|drop|drops|smear|sprinkle|sprinkling|dusting|pinches)$/.test(
    text,
  );

/** What stands before a name says how much of it is meant. */
const portioningBefore = (
  tokens: readonly Token[],
  from: number,
  floor: number,
  skip: (i: number) => boolean,
): Portioning => {
  let at = from - 1;
  let of = false;
  // Adjectives of the cook's own ("the sifted flour", "the warm milk") stand between the amount and the name.
  for (let skipped = 0; at >= floor && skipped < 4; at -= 1) {
    const here = word(tokens, at);
    // "Quarter the potatoes": the verb is no share.
    if (skip(at)) break;
    if (here === "of") {
      of = true;
      continue;
    }
    if (/^(the|your|this|that|these|those|its|their)$/.test(here)) continue;
    if (
      /^(rest|remainder|remaining|reserved|last|leftover|left-over)$/.test(here) &&
      (here !== "last" || of)
    ) {
      if (here === "reserved") return { kind: "plain" };
      return { kind: "rest" };
    }
    if (here === "other" && fractions.get(word(tokens, at + 1)) !== undefined) return { kind: "rest" };
    if (/^(all|both|whole|entire)$/.test(here)) return { kind: "plain" };
    if (isSmall(here)) return { kind: "some", little: isLittle(here) };
    const part = fractions.get(here);
    if (part !== undefined) {
      // "half the butter", "half of it": the fraction stands right before what it divides.
      if (at + 1 < from && !/^(of|the|your|this|that|these|those|its|their|each)$/.test(word(tokens, at + 1)))
        break;
      if (word(tokens, at - 1) === "other") return { kind: "rest" };
      const times = numberBefore(tokens, at, floor);
      if (here === "half" && times !== null && times > 1) return { kind: "plain" };
      return { kind: "share", share: Math.min(1, part * (here === "half" || times === null ? 1 : times)) };
    }
    const unit = unitWords.get(here);
    if (unit !== undefined) {
      const value = numberBefore(tokens, at, floor);
      if (value !== null) return { kind: "amount", value, unit };
      return { kind: "plain" };
    }
    if (tokens[at]?.kind === "number" || numberAt(tokens, at) !== null) {
      const value = numberBefore(tokens, at + 1, floor);
      if (value !== null && (of || word(tokens, at + 1) === "the") && value > 0 && value < 1)
        return { kind: "share", share: value };
      return value === null ? { kind: "plain" } : { kind: "amount", value, unit: "piece" };
    }
    if (tokens[at]?.kind !== "word" || /^(and|or|with|in|into|to|on|over|then|add|for)$/.test(here)) break;
    skipped += 1;
  }
  return { kind: "plain" };
};

const numberBefore = (tokens: readonly Token[], end: number, floor: number): number | null => {
  for (let start = Math.max(floor, end - 4); start < end; start += 1) {
    const n = numberAt(tokens, start);
    if (n !== null && n.next === end) return n.value;
  }
  return null;
};

// Nouns that have a plural only when several kinds are meant.
const massPlurals =
  /^(flours|sugars|oils|vinegars|cheeses|creams|milks|mustards|stocks|wines|salts|butters|syrups|fats|meats|rices|lentils)$/;

/** "the yolks", "egg white", "lemon zest", "zest of the lemon", "juice from the orange". */
const portionAt = (tokens: readonly Token[], from: number, to: number): string | null => {
  const last = word(tokens, to - 1);
  const own =
    portionWords.get(last) ??
    portionWords.get(word(tokens, to)) ??
    (last === "meat" ? portionWords.get(word(tokens, to - 2)) : undefined);
  if (own !== undefined) return own;
  for (let at = from - 1; at >= Math.max(0, from - 4); at -= 1) {
    const here = word(tokens, at);
    const portion = portionWords.get(here);
    if (portion !== undefined) return /^(of|from|out)$/.test(word(tokens, at + 1)) ? portion : null;
    if (!/^(of|from|out|the|a|one|half|both|your|each|other|another|remaining)$/.test(here)) return null;
  }
  return null;
};

const portionWords: ReadonlyMap<string, string> = new Map(
  Object.entries({
    yolk: "yolk",
    yolks: "yolk",
    white: "white",
    whites: "white",
    zest: "zest",
    rind: "zest",
    juice: "juice",
    leg: "leg",
    legs: "leg",
    thigh: "thigh",
    thighs: "thigh",
    breast: "breast",
    breasts: "breast",
    wing: "wing",
    wings: "wing",
    carcass: "carcass",
    carcasses: "carcass",
  }),
);

const potWords = /^(cooking|pasta|poaching|soaking|boiling|starchy|reserved|iced|ice|salted|blanching)$/;

/** Every listed ingredient that a run of tokens names; `skip` marks tokens that are verbs or cues. */
export const findMentions = (
  tokens: readonly Token[],
  from: number,
  to: number,
  names: NameIndex,
  skip: (i: number) => boolean,
): readonly Mention[] => {
  const mentions: Mention[] = [];
  let i = from;
  let floor = from;
  while (i < to) {
    const found = skip(i) ? null : nameAt(tokens, i, names);
    if (found === null || found.to > to) {
      i += 1;
      continue;
    }
    const prev = word(tokens, i - 1);
    const next = word(tokens, found.to);
    // "Reserving a cup of the cooking water": it comes from the pot.
    const fromPot =
      (potWords.test(prev) || (found.to > i + 1 && potWords.test(word(tokens, i)))) &&
      /^(water|liquid|milk|stock|liquor)$/.test(word(tokens, found.to - 1)) &&
      // The list itself says "boiling water".
      !(found.to > i + 1 && (found.candidates[0]?.strength ?? 0) >= 5);
    // "A ladle of the pasta water": water from the pot, and no pasta.
    if (
      /^(water|liquid|liquor)$/.test(next) &&
      /^(pasta|potato|potatoes|rice|noodle|noodles|bean|beans)$/.test(word(tokens, found.to - 1))
    ) {
      i = found.to + 1;
      continue;
    }
    // "The prawns and any juices": what ran out of them.
    if (word(tokens, found.to - 1) === "juices") {
      i = found.to;
      continue;
    }
    const besides = /^(beside|alongside)$/.test(word(tokens, i - 2)) && prev === "the";
    const compared =
      besides ||
      (fromPot && word(tokens, i - 2) !== "of") ||
      /^(like|resembles?|resembling|as)$/.test(prev) ||
      (prev === "of" && /^(size|colour|color|consistency|texture|thickness)$/.test(word(tokens, i - 2))) ||
      (/^(a|an|your|the)$/.test(prev) &&
        word(tokens, i - 2) === "of" &&
        /^(size|shape|thickness|consistency|texture|width|depth|height)$/.test(word(tokens, i - 3)));
    if (
      compared ||
      isTool(next) ||
      ((found.candidates[0]?.strength ?? 0) < 4.5 && isTool(word(tokens, found.to - 1)))
    ) {
      i = found.to;
      continue;
    }
    const portioning = portioningBefore(tokens, i, floor, skip);
    const reserving =
      /^(reserving|saving|keeping)$/.test(word(tokens, found.to)) ||
      (next === "," && /^(reserving|saving|keeping)$/.test(word(tokens, found.to + 1)));
    const kept = reserving
      ? tokens.slice(found.to, found.to + 6).find((t) => fractions.get(t.text) !== undefined)
      : undefined;
    mentions.push({
      candidates: found.candidates,
      portioning:
        kept === undefined ? portioning : { kind: "share", share: 1 - (fractions.get(kept.text) ?? 0) },
      from: i,
      to: found.to,
      every:
        (/^(both|two|all|three)$/.test(prev) && word(tokens, found.to - 1).endsWith("s")) ||
        (found.to === i + 1 && massPlurals.test(word(tokens, i))),
      plural: found.to === i + 1 && word(tokens, i).endsWith("s") && !word(tokens, i).endsWith("ss"),
      isPepper:
        found.to === i + 1 && word(tokens, i) === "pepper" && !/^(the|a|each|one|your|half)$/.test(prev),
      portion: portionAt(tokens, i, found.to),
    });
    floor = found.to;
    i = found.to;
  }
  return mentions;
};

const gramsOf: Readonly<Record<string, number>> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const millilitresOf: Readonly<Record<string, number>> = {
  ml: 1,
  cl: 10,
  dl: 100,
  l: 1000,
  litre: 1000,
  tsp: 5,
  teaspoon: 5,
  tbsp: 15,
  tablespoon: 15,
  cup: 240,
  pint: 568.26125,
  quart: 946.352946,
};

/** The part of what a line lists that a stated amount is; null when the two cannot be compared. May exceed 1. */
export const shareOfAmount = (value: number, unit: string, ingredient: Ingredient): number | null => {
  for (const amount of ingredient.amounts) {
    const listed = amount.likely;
    const listedUnit = amount.unit ?? "piece";
    if (listed <= 0) continue;
    if (listedUnit === unit) return value / listed;
    for (const table of [gramsOf, millilitresOf]) {
      const a = table[unit];
      const b = table[listedUnit];
      if (a !== undefined && b !== undefined) return (value * a) / (listed * b);
    }
  }
  const grams = gramsOf[unit];
  if (grams !== undefined && ingredient.grams !== null && ingredient.grams.likely > 0)
    return (value * grams) / ingredient.grams.likely;
  return null;
};
