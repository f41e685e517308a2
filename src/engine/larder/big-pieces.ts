import { type Grams, grams } from "../measure/units.ts";
import type { Action, Dish, Ingredient } from "../model/dish.ts";
import type { Food } from "../model/food.ts";
import { foodById } from "./foods.ts";
import { techniqueById } from "./techniques.ts";

/** Meat of this weight in one piece is a joint, or a bird. Grams; common practice, no source. */
const leastJoint = 700;

/** Pieces that a joint is carved into. */
const cutOff: ReadonlySet<string> = new Set(["slice", "steak", "rasher", "portion", "chop"]);

const isCut = (words: readonly string[]): boolean =>
  words.some((word) =>
    /dice|cube|chunk|slice|strip|mince|chop|piece|\bcut\b|bite|stew|steak|ground|portions|joint(?:ed|s)\b/.test(
      word,
    ),
  );

/** Meat that is cooked in the piece, as a card has it. */
export type BigPieces = {
  /** One of them. */
  readonly grams: Grams;
  readonly count: number;
  /** The card counts them ("2 ducks"), so that more of it makes more of them, and none a heavier one. */
  readonly counted: boolean;
};

const isMeat = (food: Food): boolean => food.shelf === "meat" || food.shelf === "poultry";

const ofLine = (line: Ingredient, food: Food): BigPieces | null => {
  const weight = line.grams?.likely ?? 0;
  const [piece] = food.pieces;
  const counts = line.amounts.find((a) => a.unit === "piece")?.likely ?? null;
  if (line.gramsBasis === "pieces" || counts !== null) {
    const many = counts ?? (piece === undefined ? 0 : weight / piece.grams);
    const each = many > 0 ? weight / many : 0;
    return each >= leastJoint ? { grams: grams(each), count: many, counted: true } : null;
  }
  // A thigh or a chop is a piece by itself; a slice is cut off a joint.
  const each = piece === undefined || cutOff.has(piece.name) ? Number.POSITIVE_INFINITY : piece.grams;
  return weight >= leastJoint && each >= leastJoint
    ? { grams: grams(weight), count: 1, counted: false }
    : null;
};

/** The heaviest meat in the piece among these lines of a card; null when there is none, or it was cut up. */
export const bigPiecesAmong = (
  dish: Dish,
  lines: readonly number[],
  actions: readonly Action[],
): BigPieces | null => {
  let heaviest: BigPieces | null = null;
  for (const place of lines) {
    const line = dish.ingredients[place];
    const food = line?.food == null ? null : foodById(line.food);
    if (line === undefined || food === null || !isMeat(food) || food.hazards.includes("raw-mince")) continue;
    const found = ofLine(line, food);
    if (found === null || found.grams <= (heaviest?.grams ?? 0)) continue;
    const worked = actions.some(
      (a) =>
        a.uses.some((use) => use.ingredient === place) &&
        techniqueById(a.technique ?? "")?.miseEnPlace === true &&
        isCut([a.technique ?? "", a.verb]),
    );
    if (!worked && !isCut([...line.preparation, line.text.toLowerCase()])) heaviest = found;
  }
  return heaviest;
};

/**
 * The pieces at another size. Counted ones come whole. Of a joint there is a smaller one below the card's size; above, as
 * many as the card's size goes into it, each a little heavier, as a butcher would cut them.
 */
export const bigPiecesAtSize = (
  { grams: each, count, counted }: BigPieces,
  factor: number,
): Pick<BigPieces, "grams" | "count"> => {
  if (counted) return { grams: each, count: Math.max(1, Math.ceil(count * factor - 1e-9)) };
  const many = Math.max(1, Math.floor(factor + 1e-9));
  return { grams: grams((each * factor) / many), count: many };
};
