import {
  celsius,
  count,
  type Dish,
  exactly,
  type Guest,
  type Ingredient,
  minor,
  minutes,
  moment,
  type Pack,
  type Sitting,
  share,
} from "#engine/index.ts";
import { bareIngredient, nowhere } from "./bare.ts";

/** An ingredient by hand: so many grams of a food, as the card has it. */
export const ingredient = (
  index: number,
  food: string | null,
  weight: number | null,
  more: Partial<Ingredient> = {},
): Ingredient => bareIngredient(index, food ?? "stranger", weight, { text: "", food, ...more });

/** Counted pieces on a line: "5 yolks". */
export const pieces = (n: number, unit = "piece"): Partial<Ingredient> => ({
  amounts: [{ ...exactly(n), unit, approximate: false, vague: false, span: nowhere }],
  gramsBasis: "pieces",
});

/** A dish by hand, for so many portions. */
export const dish = (
  source: string,
  portions: number,
  ingredients: readonly Ingredient[],
  more: Partial<Dish> = {},
): Dish => ({
  source,
  text: "",
  title: source,
  titleSpan: nowhere,
  portions: exactly(count(portions)),
  yield: { kind: "portions", amount: exactly(portions), noun: "", words: { text: "", span: nowhere } },
  ingredients,
  steps: [],
  swaps: [],
  keeping: [],
  ...more,
});

/** A row of a price list; the price is in minor units. */
export const pack = (food: string, size: number, unit: string, price: number, supplier = "Market"): Pack => ({
  supplier,
  item: `${food} ${size} ${unit}`,
  food,
  size,
  unit,
  price: minor(price),
  line: 2,
});

/** A sitting with one course that serves these dishes. */
export const sitting = (dishes: readonly string[], covers: number, more: Partial<Sitting> = {}): Sitting => ({
  source: "sitting",
  title: "Trial supper",
  date: "2026-03-07",
  place: "test kitchen",
  region: "uk",
  currency: "GBP",
  covers: count(covers),
  guests: [],
  courses: [{ name: "Supper", at: moment(19 * 60), dishes }],
  crew: [],
  kitchen: {
    name: "test kitchen",
    burners: count(4),
    burnerKilowatts: 3,
    ovens: [{ name: "oven", shelves: count(3), fan: true, kilowatts: 4 }],
    grills: count(1),
    fryers: count(0),
    fridgeLitres: 300,
    freezerLitres: 60,
    pans: [{ name: "large pan", litres: 8, count: count(2) }],
    trays: count(4),
    containers: [],
    machines: [],
    ovenMinutesPer10C: minutes(1),
    ovenTolerance: celsius(5),
  },
  packs: [],
  spare: share(0),
  foodCostTarget: share(0.3),
  taxRate: share(0.2),
  ...more,
});

/** A guest with needs. */
export const guest = (name: string, ...needs: readonly string[]): Guest => ({ name, needs });
