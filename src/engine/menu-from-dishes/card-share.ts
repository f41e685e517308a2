import { foodById } from "../larder/foods.ts";
import type { Dish, Ingredient } from "../model/dish.ts";

/** How many times a component's card one use takes; `assumed` when the two sides could not be compared in one unit. */
type CardShare = { readonly factor: number; readonly assumed: boolean };

const whole: CardShare = { factor: 1, assumed: true };

const known = (factor: number): CardShare =>
  Number.isFinite(factor) && factor > 0 ? { factor, assumed: false } : whole;

const densityOf = (ingredient: Pick<Ingredient, "food">): number =>
  (ingredient.food === null ? null : foodById(ingredient.food)?.density) ?? 1;

// What a card weighs when it only says how many it serves: all that goes in, with nothing boiled away.
const gramsIn = (dish: Dish): number =>
  dish.ingredients.reduce((sum, i) => sum + (i.equipment ? 0 : (i.grams?.likely ?? 0)), 0);

/** By weight: what the line takes against what the card makes. Volumes are compared through the density of the food. */
export const shareByWeight = (taken: number, food: string | null, made: Dish): CardShare => {
  const { yield: made_ } = made;
  if (made_?.kind === "mass") return known(taken / made_.amount.likely);
  if (made_?.kind === "volume") return known(taken / densityOf({ food }) / made_.amount.likely);
  const all = gramsIn(made);
  return all > 0 ? { factor: taken / all, assumed: true } : whole;
};

/**
 * How much of another card a line uses: "1 quantity of brown stock" is once the card, "500 ml" a part of what it
 * makes, "12 tartlet cases" a part of its pieces. Masses are grams and volumes millilitres, as the reader gives them.
 */
export const cardShare = (line: Ingredient, made: Dish): CardShare => {
  const [amount] = line.amounts;
  if (line.grams !== null) return shareByWeight(line.grams.likely, line.food, made);
  if (amount === undefined || !(amount.likely > 0)) return whole;
  const isCount = amount.unit === "piece" || amount.unit === "serving";
  const claimed =
    made.yield?.kind === "pieces" || made.yield?.kind === "portions" ? made.yield.amount.likely : null;
  if (isCount && amount.likely > 1 && claimed !== null && claimed > 0) return known(amount.likely / claimed);
  return { factor: amount.likely, assumed: amount.unit !== null && amount.unit !== "batch" && !isCount };
};
