import { swapOf } from "../larder/cooked-through.ts";
import { partsOf } from "../larder/food-parts.ts";
import { foodById } from "../larder/foods.ts";
import { type UnlistedFood, unlistedFoods } from "../larder/unlisted-foods.ts";
import type { Dish } from "../model/dish.ts";
import type { Food } from "../model/food.ts";
import type { Measured, Version } from "../model/menu.ts";
import type { SourceId, Span } from "../model/span.ts";

/** Cards that dishes use, by id. */
export type Cards = ReadonlyMap<SourceId, Dish>;

/** One food of a version with the place in the words it comes from. */
export type Entry = {
  readonly measured: Measured;
  readonly food: Food | null;
  readonly source: SourceId;
  readonly span: Span;
  /** The dish's line for the card it comes from ("brown stock"); null for a food of the dish itself. */
  readonly card: string | null;
};

/** The foods of a version, each with its place: the line of the dish or of the card it uses, or the swap. */
export const entriesOf = (
  dish: Dish,
  version: Pick<Version, "swaps" | "ingredients">,
  cards: Cards,
): readonly Entry[] =>
  version.ingredients
    .filter(
      (m) =>
        m.ingredient === null || m.card !== null || !(dish.ingredients[m.ingredient]?.equipment ?? false),
    )
    .map((measured) => ({
      measured,
      food: foodOf(measured),
      ...placeOf(dish, version, measured, cards),
      card: cardName(dish, measured, cards),
    }));

/** A part of a food that the table has as its own food (yolk, juice) is declared as that. */
const foodOf = (measured: Measured): Food | null => {
  if (measured.food === null) return null;
  const [part] = measured.portion === null ? [] : partsOf(measured.food, measured.portion);
  return (part === undefined ? null : foodById(part.food)) ?? foodById(measured.food);
};

const placeOf = (
  dish: Dish,
  version: Pick<Version, "swaps">,
  measured: Measured,
  cards: Cards,
): { readonly source: SourceId; readonly span: Span } => {
  const card = measured.card === null ? undefined : cards.get(measured.card);
  const inCard = measured.cardIngredient === null ? undefined : card?.ingredients[measured.cardIngredient];
  if (card !== undefined && inCard !== undefined) return { source: card.source, span: inCard.span };
  const line = measured.ingredient === null ? undefined : dish.ingredients[measured.ingredient];
  if (line !== undefined) return { source: dish.source, span: line.span };
  const swap = swapOf(dish, version.swaps, measured);
  return { source: dish.source, span: swap?.span ?? dish.titleSpan };
};

const cardName = (dish: Dish, measured: Measured, cards: Cards): string | null => {
  if (measured.card === null) return null;
  const line = measured.ingredient === null ? undefined : dish.ingredients[measured.ingredient];
  return line?.name ?? cards.get(measured.card)?.title ?? measured.card;
};

/** Other foods that the same line allows ("butter or margarine"); they are in the dish if the cook takes them. */
export const alternativesOf = (dish: Dish, entry: Entry, cards: Cards) => {
  const { measured } = entry;
  const home = measured.card === null ? dish : cards.get(measured.card);
  const at = measured.card === null ? measured.ingredient : measured.cardIngredient;
  return at === null ? [] : (home?.ingredients[at]?.alternatives ?? []);
};

/** Foods that the method of the dish, or of a card it uses, names and no list has. */
export const unlistedIn = (dish: Dish, entries: readonly Entry[], cards: Cards): readonly UnlistedFood[] => {
  const used = new Set(entries.flatMap((entry) => entry.measured.card ?? []));
  const listed = new Set(entries.flatMap((entry) => entry.food?.id ?? []));
  return [dish, ...[...used].flatMap((source) => cards.get(source) ?? [])]
    .flatMap(unlistedFoods)
    .filter((unlisted) => !listed.has(unlisted.food.id));
};
