import { z } from "zod";
import {
  allergenGroups,
  dietFacts,
  type Food,
  type FoodAllergen,
  hazardKinds,
  type Nutrients,
  type OwnFoodFacts,
  type OwnFoodTrouble,
  ownFoods,
  shelves,
} from "#engine/index.ts";
import { checked } from "./checked.ts";
import { makeProblem, type Problem } from "./problem.ts";
import { fromZero, listOf, oneOf, positive, strictMap, text } from "./schema-parts.ts";
import { type YamlFile, yamlFile } from "./yaml-file.ts";

const allergenPattern = /^([a-z]+)(?:\s*\(([^()]+)\))?\s*(\?|~)?$/;

/** "soya", "gluten (wheat)", "fish?" (read the label), "milk~" (in most of them); null for anything else. */
const allergenOf = (words: string): FoodAllergen | null => {
  const [, name, kind, mark] = allergenPattern.exec(words.trim().toLowerCase()) ?? [];
  const group = allergenGroups.find((g) => g === name);
  if (group === undefined) return null;
  return {
    group,
    kind: kind?.trim() ?? null,
    grade: mark === "?" ? "check" : mark === "~" ? "typical" : "certain",
  };
};

const allergen = z.string({ error: () => "allergen" }).transform((words, context): FoodAllergen => {
  const read = allergenOf(words);
  if (read === null) context.addIssue({ code: "custom", message: "allergen" });
  return read ?? { group: "gluten", kind: null, grade: "check" };
});

const none = z.literal("none").transform((): never[] => []);

/** A figure for 100 g of the food; a gram cannot hold more than itself, energy and sodium apart. */
const inHundred = fromZero.refine((g) => g <= 100, { error: () => "grams-in-100" }).optional();

const foodsSchema = strictMap({
  foods: listOf(
    strictMap({
      name: text,
      plural: text.optional(),
      "other names": listOf(text).optional(),
      shelf: oneOf(shelves, "shelf").optional(),
      density: positive.refine((d) => d >= 0.02 && d <= 3, { error: () => "density" }).optional(),
      pieces: z.record(text, positive, { error: () => "pieces" }).optional(),
      trim: positive.refine((t) => t <= 1, { error: () => "share" }).optional(),
      allergens: z.union([none, listOf(allergen)], { error: () => "allergens" }).optional(),
      diet: z.union([none, listOf(oneOf(dietFacts, "diet"))], { error: () => "diet" }).optional(),
      hazards: listOf(oneOf(hazardKinds, "hazard")).optional(),
      "fridge days": positive.optional(),
      "made of": listOf(text).optional(),
      "told by": text.optional(),
      "in 100 g": strictMap({
        kcal: fromZero.refine((k) => k <= 900, { error: () => "kcal" }).optional(),
        water: inHundred,
        protein: inHundred,
        fat: inHundred,
        saturates: inHundred,
        carbohydrate: inHundred,
        sugars: inHundred,
        fibre: inHundred,
        sodium: fromZero.optional(),
        alcohol: inHundred,
      }).optional(),
    }),
  ),
});

type FoodValue = z.output<typeof foodsSchema>["foods"][number];

const nutrientsOf = (value: FoodValue["in 100 g"]): Nutrients => ({
  water: value?.water ?? null,
  kcal: value?.kcal ?? null,
  protein: value?.protein ?? null,
  fat: value?.fat ?? null,
  saturates: value?.saturates ?? null,
  carbohydrate: value?.carbohydrate ?? null,
  sugars: value?.sugars ?? null,
  fibre: value?.fibre ?? null,
  sodium: value?.sodium ?? null,
  ash: null,
  alcohol: value?.alcohol ?? null,
});

const factsOf = (value: FoodValue): OwnFoodFacts => ({
  name: value.name,
  plural: value.plural ?? null,
  otherNames: value["other names"] ?? [],
  shelf: value.shelf ?? "other",
  density: value.density ?? null,
  pieces: Object.entries(value.pieces ?? {}).map(([name, weight]) => ({ name, grams: weight })),
  trim: value.trim ?? 1,
  allergens: value.allergens ?? null,
  diet: value.diet ?? null,
  hazards: value.hazards ?? [],
  fridgeDays: value["fridge days"] ?? null,
  madeOf: value["made of"] ?? [],
  nutrients: nutrientsOf(value["in 100 g"]),
  toldBy: value["told by"] ?? null,
});

const problemOf = (file: YamlFile, trouble: OwnFoodTrouble): Problem =>
  trouble.kind === "name-taken"
    ? makeProblem("food-taken", file.placeOf(["foods", trouble.food]), { name: trouble.name, by: trouble.by })
    : makeProblem("name-unknown", file.placeOf(["foods", trouble.food, "made of", trouble.part]), {
        name: trouble.name,
        of: "food",
        near: trouble.near,
      });

/** What a file of the cook's own foods says; no foods when anything in it stops. */
export type ReadFoods = { readonly foods: readonly Food[]; readonly problems: readonly Problem[] };

/**
 * Reads a file of the cook's own foods. What a food is or holds must be stated or follow from what it is made of: diets
 * left out of both are refused, allergens left out of both are to be asked about, and that is said.
 */
export const readFoods = (name: string, words: string): ReadFoods => {
  const file = yamlFile(name, words);
  const { value, problems } = checked(file, foodsSchema);
  if (value === null) return { foods: [], problems };
  const silent = value.foods.flatMap((food, i): readonly Problem[] => {
    const told = food["made of"] !== undefined && food["made of"].length > 0;
    if (told) return [];
    const at = file.placeOf(["foods", i]);
    return [
      ...(food.diet === undefined ? [makeProblem("key-missing", at, { key: "diet", wanted: "diet" })] : []),
      ...(food.allergens === undefined ? [makeProblem("allergens-unstated", at, { name: food.name })] : []),
    ];
  });
  const { foods, trouble } = ownFoods(value.foods.map(factsOf));
  const all = [...silent, ...trouble.map((t) => problemOf(file, t))];
  return { foods: all.some((p) => p.severity === "stop") ? [] : foods, problems: all };
};
