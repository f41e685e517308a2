import { roundEnergyForLabelEu } from "../measure/round-for-label-eu.ts";
import { minutes } from "../measure/units.ts";
import type { DishDeclaration } from "../model/declaration.ts";
import type { Dish, Step } from "../model/dish.ts";
import type { WriteUp } from "../model/write-up.ts";
import { cautionsOf } from "./cautions.ts";
import { dietsOf } from "./diets.ts";
import { handsMinutes, totalMinutes } from "./work-minutes.ts";

/**
 * A dish as a document, in the cook's own words. The declaration is of the dish as written; without one the document
 * says nothing of allergens, energy or diets.
 */
export const writeUpFromDish = (dish: Dish, declaration: DishDeclaration | null): WriteUp => ({
  title: dish.title,
  portions: dish.portions,
  yieldText: dish.yield?.words.text ?? null,
  handsMinutes: handsMinutes(dish),
  totalMinutes: totalMinutes(dish),
  parts: partsOf(dish),
  steps: dish.steps.map((step) => ({
    part: step.part,
    phase: step.phase,
    text: step.text,
    minutes: statedMinutes(step),
  })),
  keeping: dish.keeping.map((k) => k.text),
  swaps: dish.swaps.map((s) => s.text),
  allergens: (declaration?.allergens ?? []).map(({ group, grade, paths }) => ({
    group,
    grade,
    // Beside what holds it, a label that may say the same adds nothing.
    names: [
      ...new Set(
        paths
          .filter((path) => grade === "check" || path.grade !== "check")
          .map((path) => [...path.through, path.name].join(" › ")),
      ),
    ],
  })),
  unknown: declaration?.unknown ?? [],
  cautions: cautionsOf(dish),
  kilocaloriesPerPortion: energyOf(dish, declaration),
  diets: declaration === null ? [] : dietsOf(dish, declaration),
});

/** Parts in the order of the card; the dish's own ingredients come first where the card lists them first. */
const partsOf = (dish: Dish): WriteUp["parts"] =>
  [...new Set(dish.ingredients.map((i) => i.part))].map((name) => ({
    name,
    ingredients: dish.ingredients
      .filter((i) => i.part === name)
      // "Salt and pepper" is two ingredients of one line.
      .filter((i, at, same) => same.findIndex((other) => other.span.start === i.span.start) === at)
      .map((i) => ({ text: i.text, optional: i.optional })),
  }));

// Only lengths that the words give are printed beside a step.
const statedMinutes = (step: Step): WriteUp["steps"][number]["minutes"] => {
  const stated = step.actions.flatMap((a) =>
    a.minutes === null || a.minutes.assumed ? [] : [a.minutes.likely],
  );
  return stated.length === 0 ? null : minutes(stated.reduce((sum, m) => sum + m, 0));
};

// Half a sum is no figure for a reader: it is left out unless all of it is known and the portions are the cook's own.
const energyOf = (dish: Dish, declaration: DishDeclaration | null): number | null => {
  if (declaration === null || dish.portions === null) return null;
  const { kilocalories } = declaration.perPortion;
  return kilocalories.complete ? roundEnergyForLabelEu(kilocalories.value).value : null;
};
