import { partGrams, partsOfWhole, pieceGrams } from "../larder/food-parts.ts";
import { foodById } from "../larder/foods.ts";
import { measureKind } from "../larder/measures.ts";
import { type Grams, grams } from "../measure/units.ts";
import type { Measured } from "../model/menu.ts";
import type { Demand, PartOver } from "../model/purchase.ts";
import type { Region } from "../model/sitting.ts";
import type { Want } from "./gather-wants.ts";
import { joinParts } from "./join-parts.ts";

/** All that the menu wants of one food, as purchased. */
export type Need = {
  readonly needed: Grams;
  readonly most: Grams;
  readonly demands: readonly Demand[];
  readonly partsOver: readonly PartOver[];
  /** Grams of one piece, by what the cards themselves count and weigh; null when they do not. */
  readonly gramsPerPiece: number | null;
};

type End = "likely" | "high";

const alone = ({ measured, asSuch }: Want, end: End): number =>
  (asSuch ? measured.edible : measured.asPurchased)?.[end] ?? 0;

const weigh = (wants: readonly Want[], end: End, region: Region) => {
  const [first] = wants;
  const food = first?.food == null ? null : foodById(first.food);
  const whole = food === null ? null : pieceGrams(food, region);
  const taken = whole === null ? [] : wants.filter((w) => w.parts.length > 0);
  const given = taken[0]?.food == null ? [] : partsOfWhole(taken[0].food);
  const known = new Map(given.map((p) => [p.part, partGrams(p, region) ?? 0]));
  const joined = joinParts(
    taken.map((w) => ({ parts: w.parts.map((p) => p.part), wholes: alone(w, end) / (whole ?? 1) })),
    [...known.keys()],
    (part) => known.get(part) ?? 0,
  );
  const each = wants.map((w) => {
    const place = taken.indexOf(w);
    return place < 0 ? alone(w, end) : (joined.shares[place] ?? 0) * (whole ?? 1);
  });
  const over = [...joined.over].flatMap(([part, wholes]): readonly PartOver[] => {
    const weight = wholes * (known.get(part) ?? 0);
    return weight > 1e-9 ? [{ part, grams: grams(weight) }] : [];
  });
  return { each, over };
};

// "2 celeriac" or "2 large celeriac" count wholes; "3 cloves" and "1 bunch" do not.
const isWholePiece = ({ pieces, pieceName }: Measured): boolean => {
  const kind = pieceName === null ? null : measureKind(pieceName);
  return pieces !== null && (kind === null || kind === "size");
};

const sum = (numbers: readonly number[]): Grams => grams(numbers.reduce((a, b) => a + b, 0));

/**
 * Adds up what is wanted of one food, at the likely value of each estimate: that is what the card means, and spare
 * portions are what covers the doubt. The high end is handed on beside it. Parts of one food are joined: eggs are
 * bought once for yolks and whites, and what nobody uses is said.
 */
export const consolidate = (wants: readonly Want[], region: Region): Need => {
  const likely = weigh(wants, "likely", region);
  const counted = wants.filter(
    (w) => isWholePiece(w.measured) && w.parts.length === 0 && alone(w, "likely") > 0,
  );
  const pieces = sum(counted.map((w) => w.measured.pieces?.likely ?? 0));
  return {
    needed: sum(likely.each),
    most: sum(weigh(wants, "high", region).each),
    demands: wants.map((w, i) => ({
      dish: w.dish,
      version: w.version,
      ingredient: w.measured.ingredient,
      grams: grams(likely.each[i] ?? 0),
    })),
    partsOver: likely.over,
    gramsPerPiece: pieces > 0 ? sum(counted.map((w) => alone(w, "likely"))) / pieces : null,
  };
};
