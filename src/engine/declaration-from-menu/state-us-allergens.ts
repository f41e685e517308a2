import { withMadeOf } from "../larder/made-of.ts";
import { strongest } from "../larder/strongest.ts";
import type { DishDeclaration } from "../model/declaration.ts";
import type { AllergenGroup, FoodId } from "../model/food.ts";
import type { Entry } from "./entries.ts";
import type { GroupPath } from "./state-allergens.ts";

type UsAllergen = {
  readonly name: string;
  readonly group: AllergenGroup;
  readonly kinds?: readonly string[];
};

/**
 * The nine major food allergens of the US acts (FALCPA 2004, FASTER 2021), by the groups of the food table. Molluscs,
 * celery, mustard, lupin, sulphites, and the gluten of rye, barley and oats are not among them.
 */
const usAllergens: readonly UsAllergen[] = [
  { name: "milk", group: "milk" },
  { name: "egg", group: "eggs" },
  { name: "fish", group: "fish" },
  { name: "crustacean shellfish", group: "crustaceans" },
  { name: "tree nuts", group: "nuts" },
  { name: "wheat", group: "gluten", kinds: ["wheat", "spelt"] },
  { name: "peanuts", group: "peanuts" },
  { name: "soybeans", group: "soya" },
  { name: "sesame", group: "sesame" },
];

// Tree nuts in the US that are in no group of Annex II (FDA guidance on food allergens, January 2025; from memory).
const usTreeNuts: readonly FoodId[] = ["pine-nut"];

/** The US allergens found, with the ingredients they come from. Oils that US law lets off as highly refined are stated too. */
export const stateUsAllergens = (
  paths: readonly GroupPath[],
  entries: readonly Entry[],
): DishDeclaration["allergensUs"] =>
  usAllergens.flatMap(({ name, group, kinds }) => {
    const own = paths.filter(
      // Gluten of an unnamed cereal may be wheat.
      (path) =>
        path.group === group && (kinds === undefined || path.kind === null || kinds.includes(path.kind)),
    );
    const nuts = group === "nuts" ? entries.filter(holdsUsTreeNut) : [];
    const grade = strongest([...own.map((path) => path.grade), ...nuts.map(() => "certain" as const)]);
    if (grade === null) return [];
    const from = [...own.map((path) => path.name), ...nuts.map((entry) => entry.measured.name)];
    return [{ name, grade, from: [...new Set(from)] }];
  });

const holdsUsTreeNut = (entry: Entry): boolean =>
  entry.food !== null && withMadeOf(entry.food).some((held) => usTreeNuts.includes(held.food.id));
