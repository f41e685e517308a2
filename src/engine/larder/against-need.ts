import type { AllergenGrade, DietFact, Food } from "../model/food.ts";
import type { Need } from "../model/need.ts";
import { findFood, foodById } from "./foods.ts";
import { strongest } from "./strongest.ts";

/**
 * How strongly a food stands against a need, what it is made of included; null when nothing in the tables does, which
 * promises nothing. "certain" and "typical" rule it out; "check" must be asked or read from a label.
 * A hazard that cooking removes counts as "check": whether it is cooked, only the dish can say.
 */
export const againstNeed = (food: Food, need: Need): AllergenGrade | null =>
  strongest(grades(food, need, []));

const grades = (food: Food, need: Need, above: readonly string[]): readonly AllergenGrade[] => [
  ...food.allergens.flatMap((a): AllergenGrade[] => {
    if (need.allergens.includes(a.group)) return [a.grade];
    return need.asks.allergens.includes(a.group) ? ["check"] : [];
  }),
  ...food.diet.flatMap((fact): AllergenGrade[] => {
    if (need.diet.includes(fact)) return ["certain"];
    return need.asks.diet.includes(fact) ? ["check"] : [];
  }),
  ...food.hazards.flatMap((hazard): AllergenGrade[] => {
    if (need.cautions.includes(hazard)) return ["typical"];
    return need.asks.cautions.includes(hazard) ? ["check"] : [];
  }),
  ...(need.asks.foods.includes(food.id) ? (["check"] as const) : []),
  ...parts(food, above).flatMap((part) => grades(part, need, [...above, food.id])),
];

/** The foods that a compound lists and the table knows. A food that lists itself is not followed twice. */
const parts = (food: Food, above: readonly string[]): readonly Food[] =>
  food.madeOf.flatMap((name) => {
    const part = foodById(name) ?? findFood(name);
    return part === null || part.id === food.id || above.includes(part.id) ? [] : [part];
  });

/** True when a dish whose foods are or hold these facts brings together what the need keeps apart (meat and milk). */
export const broughtTogether = (facts: ReadonlySet<DietFact>, need: Need): boolean =>
  need.apart.length > 1 && need.apart.every((fact) => facts.has(fact));
