import { type Grams, grams } from "../measure/units.ts";
import type { Food, FoodId } from "../model/food.ts";
import { foodById } from "./foods.ts";

/** A part that a whole food gives, sold and weighed in pieces of the whole: the yolk of an egg, the juice of a lemon. */
export type FoodPart = {
  readonly whole: FoodId;
  /** As cards say it: "yolk", "white", "juice", "zest". */
  readonly part: string;
  /** The part as a food of its own, where the table has it. */
  readonly food: FoodId;
  /** What one whole gives. */
  readonly grams: Grams;
  readonly source: string;
};

const part = (whole: FoodId, name: string, food: FoodId, each: number, source: string): FoodPart => ({
  whole,
  part: name,
  food,
  grams: grams(each),
  source,
});

/** Parts of one whole can be taken from the same piece: eggs for 5 yolks also give 5 whites. */
const foodParts: readonly FoodPart[] = [
  part("egg", "white", "egg-white", 33, "USDA SR28 01124, large"),
  part("egg", "yolk", "egg-yolk", 17, "USDA SR28 01125, large"),
  part("lemon", "juice", "lemon-juice", 48, "USDA SR28 09152, yield from one lemon"),
  part("lemon", "zest", "lemon-zest", 2, "USDA SR28 09156, a teaspoon; fine grater"),
  part("lime", "juice", "lime-juice", 44, "USDA SR28 09160, yield from one lime"),
  part("lime", "zest", "lime-zest", 1.5, "common practice, no source"),
  part("orange", "juice", "orange-juice", 86, "USDA SR28 09206, yield from one orange"),
  part("orange", "zest", "orange-zest", 4, "common practice, no source"),
  part("grapefruit", "juice", "grapefruit-juice", 196, "USDA SR28 09128, yield from one grapefruit"),
];

const partKey = (whole: FoodId, name: string): string => `${whole}/${name}`;
const byName: ReadonlyMap<string, FoodPart> = new Map(foodParts.map((p) => [partKey(p.whole, p.part), p]));
const byFood: ReadonlyMap<FoodId, FoodPart> = new Map(foodParts.map((p) => [p.food, p]));

/**
 * The parts that a food of a card stands for: by the words ("juice", "juice and zest" of a lemon) or by the food
 * itself (egg yolk). Empty when it is a whole food.
 */
export const partsOf = (food: FoodId, portion: string | null): readonly FoodPart[] => {
  if (portion !== null) {
    const named = portion
      .split(/[^a-z]+/)
      .flatMap(
        (word) => byName.get(partKey(food, word)) ?? byName.get(partKey(food, word.replace(/s$/, ""))) ?? [],
      );
    if (named.length > 0) return named;
  }
  const own = byFood.get(food);
  return own === undefined ? [] : [own];
};

/** Weight as bought of one piece of a food that is counted: its first piece, with what is trimmed off. Null when no piece is known. */
export const wholeGrams = (food: Food): Grams | null => {
  const piece = food.pieces[0];
  return piece === undefined ? null : grams(piece.grams / (food.trim > 0 ? food.trim : 1));
};

/** The same, by id. */
export const wholeGramsById = (id: FoodId): Grams | null => {
  const food = foodById(id);
  return food === null ? null : wholeGrams(food);
};
