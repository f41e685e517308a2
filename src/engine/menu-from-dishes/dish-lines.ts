import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Dish, Ingredient } from "../model/dish.ts";
import type { Measured } from "../model/menu.ts";
import type { Region } from "../model/sitting.ts";
import type { SourceId } from "../model/span.ts";
import { cardShare } from "./card-share.ts";
import type { DishFinder } from "./find-dish.ts";
import { measureIngredient, scaleAmounts } from "./measure-ingredient.ts";

/** How many times another card one line takes. */
type CardUse = { readonly made: Dish; readonly factor: number };

/** The foods of one line for the card's own yield: itself, or those of the card it uses. */
export type Line = {
  /** Place in the dish's list; null for what a swap brings in. */
  readonly ingredient: number | null;
  readonly name: string;
  readonly foods: readonly Measured[];
  readonly use: CardUse | null;
};

/** Lines of dishes, each worked out once. */
export type LineBook = {
  /** All lines of a dish as written. */
  readonly linesOf: (dish: Dish) => readonly Line[];
  /** The foods that so much of another card brings in, for a line or a swap of a dish. */
  readonly bring: (use: CardUse, ingredient: number | null) => readonly Measured[];
  /** What was assumed or missed so far. */
  readonly findings: () => readonly Finding[];
};

const own = (ingredient: Ingredient, region: Region): Measured => ({
  ingredient: ingredient.index,
  card: null,
  cardIngredient: null,
  food: ingredient.food,
  name: ingredient.name,
  portion: ingredient.portion,
  optional: ingredient.optional,
  ...measureIngredient(ingredient, region),
  adjusted: [],
});

/**
 * Reads dishes as lines of foods. A line that names another given card, by "1 quantity of …" or by the very title of
 * the card, brings in that card's foods; a food of the table does so only when the card says how much it makes. A card that leads back to itself is not followed.
 */
export const lineBook = (finder: DishFinder, region: Region): LineBook => {
  const known = new Map<SourceId, readonly Line[]>();
  const open = new Set<SourceId>();
  const findings: Finding[] = [];

  const bring = (use: CardUse, ingredient: number | null): readonly Measured[] =>
    linesOf(use.made).flatMap((line) =>
      line.foods.map((food) => ({
        ...food,
        ...scaleAmounts(food, use.factor),
        ingredient,
        card: food.card ?? use.made.source,
        cardIngredient: food.card === null ? food.ingredient : food.cardIngredient,
      })),
    );

  const useOf = (dish: Dish, line: Ingredient): CardUse | null => {
    const named = line.card !== null;
    const made = finder.byTitle(line.card ?? line.name);
    const follows = made !== null && made.source !== dish.source && !open.has(made.source);
    if (!follows) {
      if (named)
        findings.push(makeFinding("card-unknown", dish.source, line.span, { name: line.card ?? line.name }));
      return null;
    }
    const { factor, assumed } = cardShare(line, made);
    // A plain food may share its name with a card ("eggs"): it is the card's only where their amounts can be compared.
    if (!named && assumed && line.food !== null) return null;
    const facts = { name: line.name, title: made.title };
    if (!named) findings.push(makeFinding("card-used", dish.source, line.span, facts));
    if (assumed)
      findings.push(makeFinding("card-share-assumed", dish.source, line.span, { ...facts, share: factor }));
    return { made, factor };
  };

  const lineOf = (dish: Dish, ingredient: Ingredient): Line => {
    const { index, name } = ingredient;
    const use = useOf(dish, ingredient);
    if (use !== null) return { ingredient: index, name, foods: bring(use, index), use };
    const food = own(ingredient, region);
    if (food.edible === null && food.pieces === null)
      findings.push(makeFinding("not-scaled", dish.source, ingredient.span, { name }));
    return { ingredient: index, name, foods: [food], use: null };
  };

  const linesOf = (dish: Dish): readonly Line[] => {
    const before = known.get(dish.source);
    if (before !== undefined) return before;
    open.add(dish.source);
    const lines = dish.ingredients.filter((i) => !i.equipment).map((i) => lineOf(dish, i));
    open.delete(dish.source);
    known.set(dish.source, lines);
    return lines;
  };

  return { linesOf, bring, findings: () => findings };
};
