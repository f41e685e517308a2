import type { Clause } from "./clauses.ts";
import { type Mention, shareOfAmount } from "./find-mentions.ts";
import type { StepReader } from "./step-reader.ts";
import { enough, poolOf } from "./take-classes.ts";

const isSweetPepper = (reader: StepReader, ingredient: number): boolean =>
  /\bpeppers\b|\b(bell|sweet|romano) pepper/i.test(reader.ingredients[ingredient]?.name ?? "");

const isSpice = (reader: StepReader, ingredient: number): boolean =>
  /\b(black|white|ground) pepper$/i.test(reader.ingredients[ingredient]?.name ?? "");

/** The part that all other foods of a clause are listed in, which no other part lists; null when there is none. */
const partBeside = (reader: StepReader, clause: Clause, mention: Mention): string | null => {
  if (!reader.hasParts) return null;
  const parts = new Set<string>();
  for (const other of clause.mentions) {
    const top = other.candidates[0]?.strength ?? 0;
    const own = new Set(
      other.candidates
        .filter((c) => c.strength >= top - 0.05)
        .map((c) => reader.ingredients[c.ingredient]?.part ?? ""),
    );
    if (other !== mention && own.size === 1) for (const part of own) parts.add(part);
  }
  const [only] = parts;
  return parts.size === 1 ? (only ?? null) : null;
};

/**
 * Which ingredients a mention means, of those its words fit. `part` is the part of the dish that the method stands
 * under; `hint` is one that the words around only suggest.
 */
export const choose = (
  reader: StepReader,
  clause: Clause,
  mention: Mention,
  part: string | null,
  hint: string | null,
): readonly number[] => {
  const isLeft = (i: number): boolean => (reader.remaining[i] ?? 0) > enough;
  const top = mention.candidates[0]?.strength ?? 0;
  let best = mention.candidates.filter((c) => c.strength >= top - 0.05);
  // "The oil, eggs and sugar", of two parts that both list a sugar: of the part that the others are of.
  const wanted = part ?? hint ?? (mention.candidates.length > 1 ? partBeside(reader, clause, mention) : null);
  if (wanted !== null) {
    const inPart = mention.candidates.filter(
      (c) => (reader.ingredients[c.ingredient]?.part ?? "") === wanted && c.strength >= 1,
    );
    const strongest = inPart[0]?.strength ?? 0;
    const sure =
      part !== null ||
      inPart.some((c) => isLeft(c.ingredient) || (hint === null && poolOf(reader, c.ingredient) !== null)) ||
      !best.some((c) => isLeft(c.ingredient));
    if (inPart.length > 0 && sure) best = inPart.filter((c) => c.strength >= strongest - 0.05);
  }
  // "The 3 tablespoons of oil": of two lines of oil the one that lists so much.
  const { portioning } = mention;
  if (portioning.kind === "amount" && best.length > 1) {
    const equal = best.filter((c) => {
      const line = reader.ingredients[c.ingredient];
      const share = line === undefined ? null : shareOfAmount(portioning.value, portioning.unit, line);
      return share !== null && share > 0.97 && share < 1.03;
    });
    if (equal.length === 1) best = equal;
  }
  // No part is spoken of, and the dish itself lists it beside a part: the coffee of the cake, not that of its icing.
  if (wanted === null && best.length > 1) {
    const own = best.filter((c) => reader.ingredients[c.ingredient]?.part === null);
    const there = own.some((c) => isLeft(c.ingredient) || poolOf(reader, c.ingredient) !== null);
    if (own.length > 0 && own.length < best.length && there) best = own;
  }
  // "The tomatoes, peppers, onion" is never the spice.
  if (mention.plural && !mention.isPepper && best.some((c) => isSpice(reader, c.ingredient))) {
    const others = mention.candidates.filter((c) => isSweetPepper(reader, c.ingredient));
    if (others.length > 0) best = others;
  }
  // "Salt and pepper" is never the vegetable.
  if (mention.isPepper) best = best.filter((c) => !isSweetPepper(reader, c.ingredient));
  const left = best.filter((c) => isLeft(c.ingredient));
  const pool = left.length > 0 ? left : best;
  const loose = top <= 0.6;
  // "Both sugars": of every kind that bears the name.
  if (mention.every) {
    const kinds = mention.candidates.filter(
      (c) => c.strength >= Math.min(top - 0.05, 2.5) && isLeft(c.ingredient),
    );
    return (kinds.length > pool.length ? kinds : pool).map((c) => c.ingredient);
  }
  if (loose) return pool.map((c) => c.ingredient);
  const required = pool.filter((c) => reader.ingredients[c.ingredient]?.optional !== true);
  const ranked = (required.length > 0 ? required : pool).map((c) => c.ingredient).sort((a, b) => a - b);
  // "the beans" of "black beans" and "kidney beans": all that bear the name and are called by no other.
  if (mention.plural && ranked.length > 1 && left.length > 1 && top > 3 && top < 4.5) {
    const onePart = new Set(ranked.map((i) => reader.ingredients[i]?.part)).size === 1;
    const shared = ranked.filter((i) => (reader.namedAlone[i] ?? 0) === 0);
    if (onePart && shared.length > 0) return shared;
  }
  const only = left.length > 0 ? ranked[0] : latest(reader, ranked);
  return only === undefined ? [] : [only];
};

/** Of foods that are all used up, the one that was worked on last: in the pot in hand, else in the newest. */
const latest = (reader: StepReader, candidates: readonly number[]): number | undefined => {
  const { current, pools } = reader.kitchen;
  const inHand = candidates.find((c) => current?.contents.has(c) === true);
  if (inHand !== undefined || candidates.length < 2) return inHand ?? candidates[0];
  for (let i = pools.length - 1; i >= 0; i -= 1) {
    const pool = pools[i];
    if (pool === undefined || pool.left <= enough) continue;
    const found = candidates.find((c) => pool.contents.has(c));
    if (found !== undefined) return found;
  }
  return candidates[0];
};
