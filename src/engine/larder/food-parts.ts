import { type Grams, grams } from "../measure/units.ts";
import type { Food, FoodId } from "../model/food.ts";
import type { Region } from "../model/sitting.ts";
import { foodById } from "./foods.ts";
import { measureFor } from "./measures.ts";

/** A part that a whole food gives, counted in pieces of the whole: the yolk of an egg, the juice of a lemon. */
export type FoodPart = {
  readonly whole: FoodId;
  /** As cards say it: "yolk", "white", "juice", "zest". */
  readonly part: string;
  /** The part as a food of its own. */
  readonly food: FoodId;
  /** Row of the measure table that weighs what one whole gives. */
  readonly measure: string;
};

/** Parts of one whole can be taken from the same piece: eggs for 5 yolks also give 5 whites. */
const foodParts: readonly FoodPart[] = [
  { whole: "egg", part: "white", food: "egg-white", measure: "egg white" },
  { whole: "egg", part: "yolk", food: "egg-yolk", measure: "egg yolk" },
  ...["lemon", "lime", "orange"].flatMap((whole) =>
    ["juice", "zest"].map((part) => ({ whole, part, food: `${whole}-${part}`, measure: part })),
  ),
];

const byPart: ReadonlyMap<string, FoodPart> = new Map(foodParts.map((p) => [`${p.whole}/${p.part}`, p]));
const byFood: ReadonlyMap<FoodId, FoodPart> = new Map(foodParts.map((p) => [p.food, p]));

/**
 * The parts that a food of a card stands for: by the words ("juice", "juice and zest" of a lemon) or by the food
 * itself (egg yolk). Empty when it is a whole food.
 */
export const partsOf = (food: FoodId, portion: string | null): readonly FoodPart[] => {
  const named = (portion ?? "")
    .toLowerCase()
    .split(/[^a-z]+/)
    .flatMap(
      (word) => byPart.get(`${food}/${word}`) ?? byPart.get(`${food}/${word.replace(/s$/, "")}`) ?? [],
    );
  if (named.length > 0) return [...new Set(named)];
  const own = byFood.get(food);
  return own === undefined ? [] : [own];
};

/** All parts that a whole food gives; empty for most foods. */
export const partsOfWhole = (whole: FoodId): readonly FoodPart[] =>
  foodParts.filter((p) => p.whole === whole);

/** What one whole gives of a part; null when no row weighs it. */
export const partGrams = (part: FoodPart, region: Region): Grams | null => {
  const row = measureFor(part.measure, region, foodById(part.food));
  return row?.size == null || row.per !== "g" ? null : grams(row.size.likely);
};

// Rows of the measure table that weigh one of a food go by its name, or by its name and "piece".
const rowOf = (food: Food, region: Region): number | null => {
  for (const id of [`${food.name} piece`, food.name]) {
    const row = measureFor(id, region, food);
    if (row?.size != null && row.per === "g" && row.foods.includes(food.id)) return row.size.likely;
  }
  return null;
};

/**
 * The weight as bought of one piece of a food that is counted, with what is trimmed off it; the name picks another
 * piece than the usual one ("bunch", "bulb"). Null when none is known.
 */
export const pieceGrams = (food: Food, region: Region, name: string | null = null): Grams | null => {
  const trim = food.trim > 0 ? food.trim : 1;
  if (name !== null) {
    const row = measureFor(name, region, food);
    const named =
      food.pieces.find((p) => p.name === name)?.grams ??
      (row?.size != null && row.per === "g" && row.foods.length > 0 ? row.size.likely : null);
    return named === null ? null : grams(named / trim);
  }
  const each = rowOf(food, region) ?? food.pieces[0]?.grams ?? null;
  return each === null ? null : grams(each / trim);
};
