import { partsOf } from "../../larder/food-parts.ts";
import { foodById } from "../../larder/foods.ts";
import { findSize, findUnit, type Measure, measureFor, measureKind } from "../../larder/measures.ts";
import { addEstimates, type Estimate, scaleEstimate } from "../../measure/estimate.ts";
import type { Grams } from "../../measure/units.ts";
import type { Amount, GramsBasis } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import type { Region } from "../../model/sitting.ts";

/** What is needed to weigh an amount. */
export type Weighable = {
  readonly amounts: readonly Amount[];
  readonly food: Food | null;
  readonly name: string;
  readonly portion: string | null;
  readonly size: string | null;
  readonly container: string | null;
  readonly pack: Amount | null;
  readonly level: string | null;
  readonly preparation: readonly string[];
  readonly purpose: string | null;
};

/** A weight, how it was found, and the amount it was found from. */
export type Weight = {
  readonly grams: Estimate<Grams>;
  readonly basis: GramsBasis;
  readonly amount: Amount | null;
  /** What one gram count was not read but assumed: a density, a piece, a pack. False for scales and for water by volume. */
  readonly assumed: boolean;
};

const times = (a: Estimate<number>, b: Estimate<number>): Estimate<Grams> => ({
  low: (a.low * b.low) as Grams,
  likely: (a.likely * b.likely) as Grams,
  high: (a.high * b.high) as Grams,
});

// A food that is spooned or scooped varies with how it is cut and packed: 15 per cent either way (USDA SR28 weights).
const bulkSpread = 0.15;
const pourable = 0.85;

/** Grams a millilitre with its doubt; by the food, else by its shelf. */
const densityOf = (
  food: Food | null,
  measured: boolean,
): { density: Estimate<number>; known: boolean } | null => {
  if (food === null) return null;
  if (food.density !== null) {
    const d = food.density;
    const spread = d < pourable && !measured ? bulkSpread : d < pourable ? bulkSpread / 2 : 0;
    return { density: { low: d * (1 - spread), likely: d, high: d * (1 + spread) }, known: true };
  }
  const bulk = measureFor(food.shelf, "uk", food);
  return bulk?.size == null || bulk.kind !== "bulk" ? null : { density: bulk.size, known: false };
};

const spreadOf = (count: Estimate<number>, approximate: boolean): Estimate<number> =>
  approximate && count.low === count.high
    ? { low: count.low * 0.9, likely: count.likely, high: count.high * 1.1 }
    : count;

const around = (grams: number): Estimate<number> => ({
  low: grams * 0.85,
  likely: grams,
  high: grams * 1.15,
});

const sizeFactor = (size: string | null): Estimate<number> => {
  const row = size === null ? null : findSize(size.split(" ")[0] ?? "");
  const one = { low: 1, likely: 1, high: 1 };
  if (row === null || row === "packed" || row === "medium") return one;
  return measureFor(row, "uk", null)?.size ?? one;
};

const sized = (one: Estimate<number>, size: string | null): Estimate<number> => times(one, sizeFactor(size));

const eachRow = (food: Food, size: string | null, region: Region): Measure | null => {
  const row = size === null ? null : findSize(size.split(" ")[0] ?? "");
  for (const id of [`${food.name} ${row ?? "piece"}`, `${food.name} piece`, food.name]) {
    const found = measureFor(id, region, food);
    if (found?.kind === "each" && found.per === "g") return found;
  }
  return null;
};

/** What one piece of a food weighs, by the word for the piece ("clove", "piece" for a bare count) and its size. */
const pieceOf = (weighable: Weighable, unit: string, region: Region): Estimate<number> | null => {
  const { food, size } = weighable;
  if (food === null) return null;
  if (unit === "piece") {
    const centimetres = lengthOf(size);
    const row = measureFor("piece", region, food);
    // "a 5 cm piece of ginger" weighs twice a piece of an inch.
    if (row?.size != null && row.foods.length > 0)
      return centimetres === null ? row.size : scaleEstimate(row.size, centimetres / 2.54);
    const each = eachRow(food, size, region);
    if (each?.size != null) return each.size;
    const named = food.pieces.find((p) => p.name === (size === "big" ? "large" : size));
    if (named !== undefined) return around(named.grams);
    // "6 bacon slices", "2 cinnamon sticks": the name's last word is the piece.
    const last = findUnit(weighable.name.split(/\s+/).at(-1) ?? "");
    const shaped = food.pieces.find((p) => p.name === last);
    if (shaped !== undefined) return sized(around(shaped.grams), size);
    const byShape = last === null || measureKind(last) !== "piece" ? null : measureFor(last, region, food);
    if (byShape?.size != null && byShape.per === "g" && byShape.foods.length > 0)
      return sized(byShape.size, size);
    const first = food.pieces[0];
    return first === undefined ? null : sized(around(first.grams), size);
  }
  const row = measureFor(unit, region, food);
  const weighed = row?.size != null && row.per === "g" ? row.size : null;
  // A row for this very food knows how far it varies; the food's own piece comes before a row for any food.
  if (weighed !== null && (row?.foods.length ?? 0) > 0) return sized(weighed, size);
  const own = food.pieces.find((p) => p.name === unit);
  if (own !== undefined) return sized(around(own.grams), size);
  if (weighed !== null) return sized(weighed, size);
  const first = food.pieces[0];
  const whole = ["head", "bulb", "piece", "ball", "loaf", "link", "round", "ear"].includes(unit);
  return whole && first !== undefined ? sized(around(first.grams), size) : null;
};

const lengthOf = (size: string | null): number | null => {
  const found = /(\d+(?:\.\d+)?)\s*(\S+)/.exec(size ?? "");
  const unit = found === null ? null : findUnit(found[2] ?? "");
  const row = unit === null || measureKind(unit) !== "length" ? null : measureFor(unit, "uk", null);
  return row?.size == null || found === null ? null : Number(found[1]) * row.size.likely;
};

const portionWeight = (weighable: Weighable, amount: Amount, region: Region): Weight | null => {
  if (weighable.food === null || amount.unit !== "piece") return null;
  const parts = partsOf(weighable.food.id, weighable.portion);
  if (parts.length === 0) return null;
  let each: Estimate<number> | null = null;
  for (const part of parts) {
    const row = measureFor(part.measure, region, foodById(part.food));
    if (row?.size == null || row.per !== "g") return null;
    each = each === null ? row.size : addEstimates(each, row.size);
  }
  return each === null
    ? null
    : { grams: times(amount, sized(each, weighable.size)), basis: "pieces", amount, assumed: true };
};

const weighVolume = (
  weighable: Weighable,
  amount: Amount,
  millilitres: Estimate<number>,
  basis: GramsBasis,
): Weight | null => {
  const measured = ["ml", "l", "cl", "dl"].includes(amount.unit ?? "");
  const found = densityOf(weighable.food, measured);
  if (found === null) return null;
  // Only the first amount is heaped; a figure that explains it is exact.
  const filledWord = amount === weighable.amounts[0] ? weighable.level : null;
  const level = filledWord === null ? null : measureFor(filledWord, "uk", null);
  const filled = level?.size == null ? millilitres : times(millilitres, level.size);
  const count = spreadOf(amount, amount.approximate);
  const plain = found.known && found.density.low === found.density.high && level?.size == null;
  return { grams: times(times(count, filled), found.density), basis, amount, assumed: !plain };
};

const drainedFactor = (weighable: Weighable): Estimate<number> => {
  const one = { low: 1, likely: 1, high: 1 };
  const tin = weighable.container === "tin" || weighable.container === "can" || weighable.container === "jar";
  if (!tin || !weighable.preparation.some((p) => /\bdrained\b/.test(p))) return one;
  return measureFor("drained", "uk", weighable.food)?.size ?? one;
};

/** A vague word; "a good pinch" has a row of its own beside the pinch. */
const weighVague = (weighable: Weighable, amount: Amount, unit: string, region: Region): Weight | null => {
  const filled =
    weighable.level === null ? null : measureFor(`${weighable.level} ${unit}`, region, weighable.food);
  const row = filled ?? measureFor(unit, region, weighable.food);
  if (row?.size == null) return null;
  if (row.per === "ml") return weighVolume({ ...weighable, level: null }, amount, row.size, "vague");
  return { grams: times(amount, sized(row.size, weighable.size)), basis: "vague", amount, assumed: true };
};

// Nobody counts so many of a food that has no pieces.
const leastBareGrams = 25;

/** "200 yogurt": a number without a unit, of a food that is never counted, is grams; the line is told so. */
export const isBareGrams = (weighable: Weighable, amount: Amount): boolean =>
  amount.unit === "piece" &&
  amount.likely >= leastBareGrams &&
  weighable.amounts.length === 1 &&
  weighable.food !== null &&
  weighable.food.pieces.length === 0;

/** The weight that one of the amounts states; null when it cannot be told. */
export const weighAmount = (weighable: Weighable, amount: Amount, region: Region): Weight | null => {
  const unit = amount.unit ?? "piece";
  const kind = measureKind(unit);
  const row = measureFor(unit, region, weighable.food);
  const drained = drainedFactor(weighable);
  if (kind === "mass" && row?.size != null)
    return {
      grams: times(times(spreadOf(amount, amount.approximate), row.size), drained),
      basis: "weighed",
      amount,
      assumed: false,
    };
  const portion = portionWeight(weighable, amount, region);
  if (portion !== null) return portion;
  if (kind === "volume" && row?.size != null) {
    const weight = weighVolume(weighable, amount, row.size, "volume");
    return weight === null ? null : { ...weight, grams: times(weight.grams, drained) };
  }
  if (kind === "vague") return weighVague(weighable, amount, unit, region);
  if (kind === "container") {
    if (row?.size == null || row.per === null) return null;
    if (row.foods.length === 0 && weighable.food === null) return null;
    const contents = sized(row.size, weighable.size);
    if (row.per === "ml") {
      const weight = weighVolume(weighable, amount, contents, "pack");
      return weight;
    }
    return { grams: times(times(amount, contents), drained), basis: "pack", amount, assumed: true };
  }
  const each = pieceOf(weighable, unit, region);
  if (each === null && isBareGrams(weighable, amount))
    return { grams: times(amount, { low: 1, likely: 1, high: 1 }), basis: "weighed", amount, assumed: true };
  return each === null ? null : { grams: times(amount, each), basis: "pieces", amount, assumed: true };
};

const purposeRows: readonly (readonly [RegExp, string])[] = [
  [/\b(?:fry|frying|saut|cooking|sear|pan)/, "for frying"],
  [/\b(?:greas|butter(?:ing)? the|oil(?:ing)? the|lin(?:e|ing)|tin|dish)/, "for greasing"],
  [/\b(?:dust|flouring|roll|sprinkl|dredg|coat|kneading)/, "for dusting"],
  [/\b(?:drizzl|dress)/, "for drizzling"],
  [/\b(?:brush|glaz|wash)/, "for brushing"],
];

const vagueRow = (id: string, food: Food, region: Region): Measure | null => {
  const row = measureFor(id, region, food);
  return row?.size == null ? null : row;
};

const weighRow = (row: Measure, food: Food): Estimate<Grams> | null => {
  if (row.size === null) return null;
  if (row.per !== "ml") return times({ low: 1, likely: 1, high: 1 }, row.size);
  const found = densityOf(food, true);
  return found === null ? null : times(row.size, found.density);
};

/** What a line without any figure asks for, by its purpose or because its food is a seasoning; null when nothing is usual. */
export const weighSilent = (weighable: Weighable, region: Region): Weight | null => {
  const { food, purpose } = weighable;
  if (food === null) return null;
  const said = purposeRows.find(([pattern]) => purpose !== null && pattern.test(purpose))?.[1] ?? null;
  const byPurpose = said === null ? null : vagueRow(said, food, region);
  const row = byPurpose ?? vagueRow("to taste", food, region);
  const grams = row === null ? null : weighRow(row, food);
  return grams === null ? null : { grams, basis: "vague", amount: null, assumed: true };
};

/** The further grams of "plus extra for dusting"; nothing when the food has no usual amount for it. */
export const weighExtra = (extra: string, food: Food | null, region: Region): Estimate<Grams> | null => {
  if (food === null) return null;
  const said = purposeRows.find(([pattern]) => pattern.test(extra))?.[1] ?? "little";
  const row = vagueRow(said, food, region);
  return row === null ? null : weighRow(row, food);
};

const rank: Readonly<Record<GramsBasis, number>> = {
  weighed: 5,
  volume: 4,
  pieces: 3,
  pack: 2,
  vague: 1,
  none: 0,
};

/** The weight of a line from the amount that tells it best, and the other weights that its amounts give. */
export const weigh = (
  weighable: Weighable,
  region: Region,
): { readonly best: Weight | null; readonly others: readonly Weight[] } => {
  const weights = weighable.amounts.flatMap((a) => weighAmount(weighable, a, region) ?? []);
  const [best, ...others] = [...weights].sort((a, b) => rank[b.basis] - rank[a.basis]);
  return { best: best ?? null, others };
};
