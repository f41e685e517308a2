import { type Minutes, minutes } from "../measure/units.ts";
import type { FoodId, RatePer, Technique, TechniqueId } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import { findFood } from "./foods.ts";
import { workRateRows } from "./tables/work-rates.ts";
import { techniqueByVerb } from "./techniques.ts";

/** How long one kilo or one piece takes, beyond the set-up. */
export type HandRate = {
  readonly per: RatePer;
  readonly minutes: { readonly low: Minutes; readonly likely: Minutes; readonly high: Minutes };
  /** Where it comes from: the kitchen's own measuring, the table's row for this food, or the technique's usual rate. */
  readonly from: "kitchen" | "food" | "technique";
};

const keyOf = (technique: TechniqueId, food: FoodId): string => `${technique}/${food}`;

const byFood: ReadonlyMap<string, HandRate> = new Map(
  workRateRows.map(([technique, food, per, low, likely, high]): [string, HandRate] => [
    keyOf(technique, food),
    { per, minutes: { low: minutes(low), likely: minutes(likely), high: minutes(high) }, from: "food" },
  ]),
);

/** How far a crew's own measured rate is off on another day. Common practice, no source. */
const otherDays = { low: 0.85, high: 1.25 } as const;

/**
 * The rate of work on a food: the kitchen's own for this food, else its own for the work, else the table's for the food,
 * else the technique's usual one. Null for work that is not counted by the kilo or the piece.
 */
export const handRate = (technique: Technique, food: FoodId | null, kitchen: Kitchen): HandRate | null => {
  const own = (kitchen.rates ?? []).filter((rate) => rate.technique === technique.id);
  const measured =
    own.find((rate) => rate.food !== null && rate.food === food) ?? own.find((rate) => rate.food === null);
  if (measured !== undefined) {
    const at = (times: number): Minutes => minutes(measured.minutes * times);
    return {
      per: measured.per,
      minutes: { low: at(otherDays.low), likely: at(1), high: at(otherDays.high) },
      from: "kitchen",
    };
  }
  const listed = food === null ? undefined : byFood.get(keyOf(technique.id, food));
  if (listed !== undefined) return listed;
  if (technique.law === "per-kilo") return { per: "kilo", minutes: technique.minutes, from: "technique" };
  return technique.law === "per-piece"
    ? { per: "piece", minutes: technique.minutes, from: "technique" }
    : null;
};

/** What a kitchen's words for its own rate mean: the work by a verb, the food by a name; a null is a word not known. */
export const rateNamed = (
  work: string,
  food: string | null,
): { readonly technique: TechniqueId | null; readonly food: FoodId | null; readonly known: boolean } => {
  const technique = techniqueByVerb(work)?.id ?? null;
  const row = food === null ? null : findFood(food);
  return { technique, food: row?.id ?? null, known: food === null || row !== null };
};
