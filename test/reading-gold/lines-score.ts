import { type Amount, type Ingredient, readCard } from "#engine/index.ts";
import { findFood } from "../../src/engine/larder/foods.ts";
import type { GoldAmount, GoldLine, GoldReading } from "./lines-gold.ts";

/**
 * What is counted. "whole" is a line on which every stated field of every food is right; "amounts" a line on which all
 * numbers and units are; the others count the foods on which that field is stated.
 */
export const kinds = [
  "whole",
  "amounts",
  "food",
  "name",
  "state",
  "preparation",
  "purpose",
  "optional",
  "alternatives",
  "size",
  "container",
  "portion",
  "card",
  "equipment",
  "findings",
] as const;
type Kind = (typeof kinds)[number];

/** A line that was read otherwise than the gold says, and how. */
export type Miss = { readonly text: string; readonly wrong: readonly string[] };

export type Score = {
  readonly right: Readonly<Record<Kind, number>>;
  readonly of: Readonly<Record<Kind, number>>;
  /** The lines with most wrong come first. */
  readonly misses: readonly Miss[];
};

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005 * Math.max(Math.abs(a), Math.abs(b));

const sameAmount = (gold: GoldAmount, read: Amount): boolean =>
  near(gold.low, read.low) &&
  near(gold.high, read.high) &&
  (gold.likely === null || near(gold.likely, read.likely)) &&
  gold.unit === read.unit &&
  (gold.approximate === null || gold.approximate === read.approximate) &&
  (gold.vague === null || gold.vague === read.vague);

const plain = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}%-]+/gu, " ")
    .trim();

// "peeled and chopped" and "peeled", "chopped" say the same; their order says nothing.
const bag = (words: readonly string[]): string =>
  words
    .flatMap((w) => plain(w).split(" "))
    .filter((w) => !/^(?:and|then|the|a)?$/.test(w))
    .sort()
    .join(" ");

const foodIds = (names: string | readonly string[]): readonly string[] => {
  const list = typeof names === "string" ? [names] : names;
  const found = list.flatMap((name) => findFood(name)?.id ?? []);
  if (found.length === 0) throw new Error(`the gold names a food that the table has not: ${list.join(", ")}`);
  return found;
};

const sameFood = (gold: GoldReading["food"], read: string | null): boolean =>
  gold == null ? read === null : read !== null && foodIds(gold).includes(read);

const sameAmounts = (gold: readonly GoldAmount[], read: readonly Amount[]): boolean =>
  gold.length === read.length && gold.every((g) => read.some((r) => sameAmount(g, r)));

const shown = (amounts: readonly Amount[]): string =>
  `[${amounts.map((a) => `${a.vague ? "?" : ""}${a.approximate ? "~" : ""}${a.low === a.high ? a.low : `${a.low}~${a.likely}~${a.high}`} ${a.unit}`).join(", ")}]`;

const sameAlternatives = (gold: GoldReading["alternatives"], read: Ingredient["alternatives"]): boolean =>
  (gold ?? []).length === read.length &&
  (gold ?? []).every((g, k) => {
    const other = read[k];
    return (
      other !== undefined &&
      (g.food === undefined || sameFood(g.food, other.food)) &&
      (g.name === undefined || plain(g.name) === plain(other.name)) &&
      (g.amounts === undefined || sameAmounts(g.amounts, other.amounts))
    );
  });

/** The fields that the gold states of one food: whether each was read so, and what was read instead. */
const fieldsOf = (gold: GoldReading, read: Ingredient): ReadonlyMap<Kind, readonly [boolean, string]> => {
  const found = new Map<Kind, readonly [boolean, string]>();
  const put = (kind: Kind, stated: unknown, right: boolean, got: unknown): void => {
    if (stated !== undefined) found.set(kind, [right, typeof got === "string" ? got : JSON.stringify(got)]);
  };
  const said = (a: string | null | undefined, b: string | null): boolean =>
    a == null ? b === null : b !== null && plain(a) === plain(b);
  put("amounts", gold.amounts, sameAmounts(gold.amounts ?? [], read.amounts), shown(read.amounts));
  put("food", gold.food, sameFood(gold.food, read.food), read.food);
  put("name", gold.name, said(gold.name, read.name), read.name);
  put("state", gold.state, bag(gold.state ?? []) === bag(read.state), read.state);
  put(
    "preparation",
    gold.preparation,
    bag(gold.preparation ?? []) === bag(read.preparation),
    read.preparation,
  );
  put("purpose", gold.purpose, said(gold.purpose, read.purpose), read.purpose);
  put("optional", gold.optional, gold.optional === read.optional, read.optional);
  put(
    "alternatives",
    gold.alternatives,
    sameAlternatives(gold.alternatives, read.alternatives),
    read.alternatives.map((a) => `${a.name} (${a.food}) ${shown(a.amounts)}`),
  );
  // "2-inch", "2 inch" and "2inch" are one size.
  const close = (words: string | null | undefined): string | null => words?.replace(/[\s-]+/g, "") ?? null;
  put("size", gold.size, said(close(gold.size), close(read.size)), read.size);
  put("container", gold.container, said(gold.container, read.container), read.container);
  put("portion", gold.portion, said(gold.portion, read.portion), read.portion);
  put("card", gold.card, said(gold.card, read.card), read.card);
  put("equipment", gold.equipment, gold.equipment === read.equipment, read.equipment);
  return found;
};

/** Scores the reader against lines of gold, each read as the only line of a card. */
export const scoreLines = (lines: readonly GoldLine[]): Score => {
  const none = (): Record<Kind, number> =>
    Object.fromEntries(kinds.map((k) => [k, 0])) as Record<Kind, number>;
  const right = none();
  const of = none();
  const misses: Miss[] = [];
  for (const gold of lines) {
    const card = readCard(`Dish\n\nIngredients\n${gold.text}\n\nMethod\n1. Serve.\n`, "gold", gold.region);
    const read = card.value.ingredients;
    const wrong: string[] = [];
    const count = (kind: Kind, good: boolean): void => {
      of[kind] += 1;
      if (good) right[kind] += 1;
    };
    if (read.length !== gold.foods.length)
      wrong.push(`${read.length} foods: ${read.map((r) => r.name).join(" | ")}`);
    let amounts = read.length === gold.foods.length;
    gold.foods.forEach((food, k) => {
      const line = read[k];
      const fields: ReadonlyMap<Kind, readonly [boolean, string]> =
        line === undefined
          ? new Map((Object.keys(food) as Kind[]).map((kind) => [kind, [false, "nothing"] as const]))
          : fieldsOf(food, line);
      for (const [kind, [good, got]] of fields) {
        if (kind !== "amounts") count(kind, good);
        else if (!good) amounts = false;
        if (!good) wrong.push(`${kind}: ${got}`);
      }
    });
    for (const code of gold.findings) {
      const there = card.findings.some((f) => f.code === code);
      count("findings", there);
      if (!there) wrong.push(`no finding ${code}`);
    }
    if (gold.foods.some((f) => f.amounts !== undefined)) count("amounts", amounts);
    count("whole", wrong.length === 0);
    if (wrong.length > 0) misses.push({ text: gold.text, wrong });
  }
  return { right, of, misses: misses.sort((a, b) => b.wrong.length - a.wrong.length) };
};
