import type { AllergenGrade, DietFact, Food } from "../model/food.ts";
import type { Need } from "../model/need.ts";
import { gradeThrough, withMadeOf } from "./made-of.ts";
import { strongest } from "./strongest.ts";

/**
 * How strongly a food stands against a need, what it is made of included; null when nothing in the tables does, which
 * promises nothing. "certain" and "typical" rule it out; "check" must be asked or read from a label.
 * A hazard that cooking removes counts as "check": whether it is cooked, only the dish can say.
 */
export const againstNeed = (food: Food, need: Need): AllergenGrade | null =>
  strongest([
    ...hazardGrades(food, need),
    ...[substanceAgainstNeed(food, need)].flatMap((grade) => grade ?? []),
  ]);

// A compound's own row says what is hazardous about it: the flour of baked bread is raw no more.
const hazardGrades = (food: Food, need: Need): readonly AllergenGrade[] =>
  food.hazards.flatMap((hazard): AllergenGrade[] => {
    if (need.cautions.includes(hazard)) return ["typical"];
    return need.asks.cautions.includes(hazard) ? ["check"] : [];
  });

/** The same, hazards left out: what the food is and holds, however it is cooked. */
export const substanceAgainstNeed = (food: Food, need: Need): AllergenGrade | null =>
  strongest(
    withMadeOf(food).flatMap((held) =>
      gradesOfSubstance(held.food, need).map((grade) => gradeThrough(held, grade)),
    ),
  );

const gradesOfSubstance = (food: Food, need: Need): readonly AllergenGrade[] => [
  ...food.allergens.flatMap((a): AllergenGrade[] => {
    if (need.allergens.includes(a.group)) return [a.grade];
    return need.asks.allergens.includes(a.group) ? ["check"] : [];
  }),
  ...food.diet.flatMap((fact): AllergenGrade[] => {
    if (need.diet.includes(fact)) return ["certain"];
    return need.asks.diet.includes(fact) ? ["check"] : [];
  }),
  ...(need.asks.foods.includes(food.id) ? (["check"] as const) : []),
];

/** True when a dish whose foods are or hold these facts brings together what the need keeps apart (meat and milk). */
export const broughtTogether = (facts: ReadonlySet<DietFact>, need: Need): boolean =>
  need.apart.length > 1 && need.apart.every((fact) => facts.has(fact));
