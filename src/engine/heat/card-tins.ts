import { ownVessels } from "../larder/own-vessels.ts";
import { type Metres, metres } from "../measure/heat-units.ts";
import type { Dish } from "../model/dish.ts";
import type { Tin } from "./tins.ts";

/** The tins that a card is baked in at its own size. */
export type CardTins = {
  readonly tin: Tin;
  /** High and narrow, for bread and terrines. */
  readonly loaf: boolean;
  readonly count: number;
  /** "23 cm round tin", as the card calls one. */
  readonly name: string;
};

const inch = 0.0254;
const sides = /(\d+(?:\.\d+)?)\s*(?:cm|in|inch)?\s*[x×]\s*(\d+(?:\.\d+)?)\s*(cm|in|inch)/i;
const width = /(\d+(?:\.\d+)?)[\s-]*(cm|in|inch)\b/i;
const loafOf = /(\d+(?:\.\d+)?)[\s-]*(lb|g|kg)\b.*\bloaf\b/i;
/** Loaf tins are called by the pounds of bread they bake: their floors, metres. Common practice, no source. */
const loaves = [
  { grams: 450, long: 0.16, wide: 0.09 },
  { grams: 900, long: 0.21, wide: 0.11 },
] as const;
const inGrams: { readonly [unit: string]: number } = { lb: 454, kg: 1000, g: 1 };

/** "20 cm round tin", wherever a card tells it. */
const sizedTin =
  /(\d+(?:\.\d+)?\s*(?:(?:cm|in|inch)?\s*[x×]\s*\d+(?:\.\d+)?)?[\s-]*(?:cm|inch|in|lb|kg|g)\b[\w\s-]{0,24}?\btin)s?\b/gi;

const lengthOf = (figure: string | undefined, unit: string | undefined): Metres =>
  metres(Number(figure) * (unit?.toLowerCase() === "cm" ? 0.01 : inch));

/** The tin that words tell the size of: "23 cm round tin", "33 x 23 cm tin", "2 lb loaf tin"; null when they tell none. */
export const tinFrom = (words: string): Tin | null => {
  const two = sides.exec(words);
  if (two) return { form: "rectangle", long: lengthOf(two[1], two[3]), wide: lengthOf(two[2], two[3]) };
  const one = width.exec(words);
  if (one) {
    const wide = lengthOf(one[1], one[2]);
    return /square/i.test(words)
      ? { form: "rectangle", long: wide, wide }
      : { form: "round", diameter: wide };
  }
  const [, figure, unit = ""] = loafOf.exec(words) ?? [];
  const weight = Number(figure ?? Number.NaN) * (inGrams[unit.toLowerCase()] ?? 0);
  const near = loaves.find(({ grams }) => Math.abs(weight / grams - 1) < 0.15);
  return near === undefined ? null : { form: "rectangle", long: metres(near.long), wide: metres(near.wide) };
};

const named = (words: string, count: number): CardTins | null => {
  const tin = tinFrom(words);
  const name = words
    .replace(/^(?:an?|the|your|each|lined|greased|buttered)\s+/i, "")
    .replace(/\btins\b/, "tin");
  return tin === null || !(count > 0) ? null : { tin, loaf: /\bloaf\b/i.test(words), count, name };
};

/** The tins of a card that says what it fills, or names tins with their size in the method; null for others. */
export const tinsOf = (dish: Dish): CardTins | null => {
  const made = dish.yield;
  if (made?.kind === "tin") return named(made.noun, made.amount.likely);
  for (const own of ownVessels(dish)) {
    const tins = own.noun === "tin" ? named(own.name, own.count) : null;
    if (tins !== null) return tins;
  }
  for (const [, words = ""] of dish.text.matchAll(sizedTin)) {
    const tins = named(words, 1);
    if (tins !== null) return tins;
  }
  return null;
};
