import type { Clause } from "./clauses.ts";
import { newestPool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import type { Product } from "./taken.ts";
import { determiners } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

const shares: ReadonlyMap<string, number> = new Map(
  Object.entries({
    "one-third": 1 / 3,
    "two-thirds": 2 / 3,
    "one-half": 0.5,
    "one-quarter": 0.25,
    "three-quarters": 0.75,
    most: 0.75,
    half: 0.5,
    third: 1 / 3,
    quarter: 0.25,
    thirds: 2 / 3,
  }),
);

/** The share that stands before a noun; 1 where none does. */
export const shareBefore = (clause: Clause, i: number): number | "rest" => {
  for (let at = i - 1; at >= Math.max(0, i - 4); at -= 1) {
    const here = word(clause, at);
    if (/^(rest|remaining|remainder|other)$/.test(here)) return "rest";
    const share = shares.get(here);
    if (share !== undefined) return share;
    if (/^(some|little|bit|spoonful|ladleful|few)$/.test(here)) return 0.25;
    if (!determiners.has(here) && here !== "of") break;
  }
  return 1;
};

/** "Press most of it on to the fish": a part of what is in hand. */
export const partOfIt = (reader: StepReader, clause: Clause, i: number): Product | null => {
  const { current } = reader.kitchen;
  if (current === null || current.contents.size === 0 || current.left <= 0.001) return null;
  // "Pour half over the salmon"
  const half =
    word(clause, i) === "half" && i === clause.verbTo && /^(over|into|onto)$/.test(word(clause, i + 1));
  // "Fry off a little bit and taste it"
  const morsel =
    /^(bit|piece|morsel|spoonful)$/.test(word(clause, i)) &&
    i <= clause.verbTo + 2 &&
    word(clause, clause.verbTo) === "a" &&
    word(clause, i + 1) !== "of" &&
    /^(fry|cook|boil|taste|grill)$/.test(clause.hit?.technique.id ?? "");
  // "Keep a spoonful back for the top"
  const kept =
    clause.hit?.technique.id === "set-aside" &&
    clause.mentions.length === 0 &&
    i <= clause.verbTo + 2 &&
    word(clause, i + 1) !== "of" &&
    /^(spoonful|little|bit|few|handful|ladleful|cupful|third|quarter)$/.test(word(clause, i));
  if (kept) return { pool: current, members: [], share: 0.1, from: i, to: i + 1 };
  if (morsel) return { pool: current, members: [], share: 0.02, from: i, to: i + 1 };
  if (half) return { pool: current, members: [], share: 0.5, from: i, to: i + 1 };
  if (word(clause, i - 1) !== "of" || !/^(it|this|that|them)$/.test(word(clause, i))) return null;
  const share = shareBefore(clause, i - 1);
  return share === 1 || share === "rest" ? null : { pool: current, members: [], share, from: i, to: i + 1 };
};

const meatPlaces = new Set("skin cavity flesh breast breasts over bird".split(" "));

/** "Under the skin", "smear the rest all over", "stuff the bird": the meat that lies ready. */
export const onTheMeat = (reader: StepReader, clause: Clause, i: number): Product | null => {
  const here = word(clause, i);
  if (!meatPlaces.has(here)) return null;
  const on =
    (/^(skin|cavity|flesh|breast|breasts)$/.test(here) &&
      /^(under|inside|into|between|over|on)$/.test(word(clause, i - 2))) ||
    (here === "over" &&
      word(clause, i - 1) === "all" &&
      /^(rub|spread|season|brush|salt)$/.test(clause.hit?.technique.id ?? "")) ||
    (here === "bird" && word(clause, i - 1) === "the");
  if (!on || clause.mentions.length > 1) return null;
  const meats = reader.classes.membersOf("meat");
  const pool = newestPool(reader.kitchen, (p) => meats.some((m) => p.contents.has(m)));
  return pool === null ? null : { pool, members: [], share: 1, from: i, to: i + 1 };
};
