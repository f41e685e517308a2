import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { grams } from "../measure/units.ts";
import type { DishDeclaration } from "../model/declaration.ts";
import type { Dish } from "../model/dish.ts";
import type { Version } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import { addNutrition, scaleNutrition } from "./add-nutrition.ts";
import { cardWeights, eatenFoods } from "./card-weights.ts";
import { alternativesOf, type Cards, type Entry, entriesOf, unlistedIn } from "./entries.ts";
import { listIngredients } from "./list-ingredients.ts";
import {
  allergenPaths,
  type GroupPath,
  namesOnce,
  stateAllergens,
  unlistedPaths,
} from "./state-allergens.ts";
import { stateUsAllergens } from "./state-us-allergens.ts";

/** Allergens, ingredient list and nutrition of one version of a dish, from the amounts it is made of. */
export const declareDish = (
  dish: Dish,
  version: Version,
  cards: Cards,
): Outcome<DishDeclaration, Finding> => {
  const entries = entriesOf(dish, version, cards);
  const found = entries.map((entry) => ({ entry, paths: allergenPaths(dish, entry, cards) }));
  const listed = found.flatMap((f) => f.paths);
  const paths = [
    ...listed,
    ...unlistedPaths(unlistedIn(dish, entries, cards)).filter(
      (path) => !listed.some((other) => other.group === path.group && other.kind === path.kind),
    ),
  ];
  const cardGrams = cardWeights(dish, version, entries);
  const eaten = eatenFoods(dish, entries, cardGrams);
  const whole = addNutrition(eaten);
  const total = eaten.reduce((sum, food) => sum + (food.grams ?? 0), 0);
  const portions = Math.max(1, version.portions);
  const unknown = unknownNames(dish, entries, cards);
  const value: DishDeclaration = {
    dish: dish.source,
    version: version.id,
    title: dish.title,
    allergens: stateAllergens(paths),
    allergensUs: stateUsAllergens(paths, entries),
    unknown,
    ingredients: listIngredients(entries, cardGrams),
    portionGrams: grams(total / portions),
    perPortion: scaleNutrition(whole, 1 / portions),
    per100g: scaleNutrition(whole, total === 0 ? 0 : 100 / total),
  };
  return {
    value,
    findings: [...labelFindings(found), ...unknownFindings(entries), ...figureFindings(dish, value, total)],
  };
};

/** Foods that the words name and the table does not know, those that a line only allows among them. */
const unknownNames = (dish: Dish, entries: readonly Entry[], cards: Cards): readonly string[] =>
  namesOnce(
    entries.flatMap((entry) => [
      ...(entry.food === null ? [entry.measured.name] : []),
      ...alternativesOf(dish, entry, cards)
        .filter((other) => other.food === null)
        .map((other) => other.name),
    ]),
  );

// One finding a food, however many groups its label must be read for.
const labelFindings = (
  found: readonly { readonly entry: Entry; readonly paths: readonly GroupPath[] }[],
): readonly Finding[] =>
  found.flatMap(({ entry, paths }) => {
    const toCheck = paths.filter((path) => path.grade === "check");
    return [...new Set(toCheck.map((path) => path.name))].map((name) =>
      makeFinding("allergen-check-label", entry.source, entry.span, {
        name,
        group: [...new Set(toCheck.filter((p) => p.name === name).map((p) => p.kind ?? p.group))].join(", "),
      }),
    );
  });

const unknownFindings = (entries: readonly Entry[]): readonly Finding[] =>
  entries
    .filter((entry) => entry.food === null)
    .map((entry) =>
      makeFinding("food-could-hold-anything", entry.source, entry.span, { name: entry.measured.name }),
    );

const figureFindings = (dish: Dish, declared: DishDeclaration, total: number): readonly Finding[] => {
  const facts = declared.perPortion;
  const missing = namesOnce(Object.values(facts).flatMap((sum) => sum.missing));
  return [
    ...(total === 0
      ? []
      : [makeFinding("figures-from-raw-weights", dish.source, dish.titleSpan, { title: dish.title })]),
    ...(missing.length === 0
      ? []
      : [
          makeFinding("nutrition-incomplete", dish.source, dish.titleSpan, {
            title: dish.title,
            missing: missing.join(", "),
          }),
        ]),
  ];
};
