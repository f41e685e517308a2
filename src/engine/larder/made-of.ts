import type { AllergenGrade, Food } from "../model/food.ts";
import { findFood, foodById } from "./foods.ts";

/** A food that is in another, and the names of the compounds between them, outermost first; empty for the food itself. */
type Held = { readonly food: Food; readonly through: readonly string[] };

/**
 * A food and every food that its compound lists name, at any depth. A name that the table does not know is left out:
 * what it could hold is in the compound's own allergens. A compound that lists itself is not followed twice.
 */
export const withMadeOf = (food: Food): readonly Held[] => unfold(food, [], []);

const unfold = (food: Food, through: readonly string[], above: readonly string[]): readonly Held[] => [
  { food, through },
  ...food.madeOf.flatMap((name) => {
    const part = foodById(name) ?? findFood(name);
    if (part === null || part.id === food.id || above.includes(part.id)) return [];
    return unfold(part, [...through, food.name], [...above, food.id]);
  }),
];

/** How sure a grade of a held food is for the compound: its list is the usual recipe, and a brand may leave a part out. */
export const gradeThrough = (held: Held, grade: AllergenGrade): AllergenGrade =>
  held.through.length > 0 && grade === "certain" ? "typical" : grade;
