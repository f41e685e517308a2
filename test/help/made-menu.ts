import type {
  Action,
  Dish,
  Guest,
  Ingredient,
  Measured,
  Menu,
  MenuDish,
  Sitting,
  Swap,
  Version,
} from "#engine/index.ts";
import { count, exactly, grams, share } from "#engine/index.ts";
import { bareAction, bareIngredient, nowhere } from "./bare.ts";
import { sitting } from "./dishes.ts";

/** An ingredient line made by hand: a food of the table, or null for words that were not understood. */
export const line = (
  index: number,
  name: string,
  food: string | null,
  g: number | null,
  more: Partial<Ingredient> = {},
): Ingredient =>
  bareIngredient(index, name, g, {
    span: { start: index, end: index + 1 },
    weightBasis: "edible-portion",
    food,
    ...more,
  });

/** An action made by hand that takes ingredients, and products of earlier actions. */
export const action = (
  id: string,
  technique: string,
  takes: readonly number[],
  products: readonly string[] = [],
  more: Partial<Action> = {},
): Action =>
  bareAction(id, technique, {
    uses: [
      ...takes.map((ingredient) => ({ ingredient, product: null })),
      ...products.map((product) => ({ ingredient: null, product })),
    ].map((taken) => ({ ...taken, share: share(1), implied: false, span: nowhere })),
    ...more,
  });

/** A dish made by hand. */
export const dish = (
  source: string,
  ingredients: readonly Ingredient[],
  actions: readonly Action[] = [],
  more: Partial<Dish> = {},
): Dish => ({
  source,
  text: " ".repeat(200),
  title: source,
  titleSpan: nowhere,
  portions: exactly(count(4)),
  yield: null,
  ingredients,
  steps: [{ index: 0, text: "", span: nowhere, part: null, phase: "method", actions }],
  swaps: [],
  keeping: [],
  ...more,
});

/** What a version takes of a line, in the amount of the line. */
export const measured = (i: Ingredient, factor = 1): Measured => ({
  ingredient: i.index,
  card: null,
  cardIngredient: null,
  food: i.food,
  name: i.name,
  portion: i.portion,
  optional: i.optional,
  edible: i.grams === null ? null : exactly(grams(i.grams.likely * factor)),
  asPurchased: i.grams === null ? null : exactly(grams(i.grams.likely * factor)),
  pieces: null,
  pieceName: null,
  adjusted: [],
});

/** The dish as written, for so many portions. */
export const asWritten = (d: Dish, portions = 4, guests: readonly string[] = []): Version => ({
  id: "as-written",
  swaps: [],
  guests,
  portions: count(portions),
  factor: portions / 4,
  ingredients: d.ingredients.map((i) => measured(i, portions / 4)),
});

/** "Without nuts": the first line goes out, sunflower seeds come in. */
export const nutSwap: Swap = {
  text: "",
  span: nowhere,
  needs: ["no-nuts"],
  out: [0],
  comes: [{ food: "sunflower-seed", name: "sunflower seeds", grams: null, amounts: [] }],
};

/** The dish with its swaps for some guests. */
export const withSwap = (d: Dish, swap: Swap, at: number, guests: readonly string[]): Version => ({
  ...asWritten(d, guests.length, guests),
  id: swap.needs.join("+"),
  swaps: [at],
  ingredients: [
    ...d.ingredients.filter((i) => !swap.out.includes(i.index)).map((i) => measured(i)),
    ...swap.comes.map((c) => ({
      ...measured(line(0, c.name, c.food, c.grams?.likely ?? null)),
      ingredient: null,
    })),
  ],
});

/** A menu made by hand, all dishes in one course. */
export const menu = (
  dishes: readonly {
    readonly dish: Dish;
    readonly versions: readonly Version[];
    readonly unserved?: MenuDish["unserved"];
  }[],
  guests: readonly Guest[],
  more: Partial<Sitting> = {},
  components: Menu["components"] = [],
): Menu => ({
  sitting: sitting(
    dishes.map((d) => d.dish.source),
    4,
    { guests, ...more },
  ),
  dishes: dishes.map((d) => ({
    dish: d.dish,
    course: 0,
    versions: d.versions,
    batches: [],
    vessels: [],
    unserved: d.unserved ?? [],
  })),
  components,
  spare: share(0),
});
