import { energyFactors, energyForLabelEu, saltOfSodium } from "../measure/energy-for-label.ts";
import type { KnownSum, NutritionFacts } from "../model/declaration.ts";
import type { Food } from "../model/food.ts";

/** A food and how much of it goes in; null grams when the words do not say. */
export type Portioned = { readonly name: string; readonly food: Food | null; readonly grams: number | null };

/** What labels count, in 100 g of one food; null where no table knows. */
type LabelNutrients = {
  readonly fat: number | null;
  readonly saturates: number | null;
  readonly carbohydrate: number | null;
  readonly sugars: number | null;
  readonly fibre: number | null;
  readonly protein: number | null;
  readonly salt: number | null;
  readonly alcohol: number | null;
  readonly kilojoules: number | null;
  readonly kilocalories: number | null;
};

/**
 * Nutrition of some foods together, by the weights that go into the bowl: nothing is taken off for water lost or added
 * for fat taken up. A value that no table knows is named as missing and never counted as nothing, unless so little of
 * the food goes in that it could not change the figure.
 */
export const addNutrition = (foods: readonly Portioned[]): NutritionFacts => {
  const known = foods.map((f) => ({ ...f, nutrients: f.food === null ? null : labelNutrients(f.food) }));
  const sum = (of: keyof LabelNutrients): KnownSum => {
    let value = 0;
    // The most that foods of known weight and unknown values could add; without a weight there is no such most.
    let most = 0;
    const missing: string[] = [];
    for (const { name, grams, nutrients } of known) {
      const per100 = nutrients === null ? null : nutrients[of];
      // Nothing of it in any amount: an amount that is not known does no harm.
      if (per100 === 0 || grams === 0) continue;
      if (per100 === null || grams === null) {
        missing.push(name);
        most += grams === null ? Number.POSITIVE_INFINITY : grams * mostPerGram(of);
      } else value += (grams * per100) / 100;
    }
    // A bay leaf without figures does not make the energy of a stew unknown.
    if (most <= value * trifling) missing.length = 0;
    // Nothing listed is nothing known.
    return {
      value,
      complete: foods.length > 0 && missing.length === 0,
      missing: [...new Set(missing)],
    };
  };
  const carbohydrate = sum("carbohydrate");
  const sugars = sum("sugars");
  return {
    kilojoules: sum("kilojoules"),
    kilocalories: sum("kilocalories"),
    fat: sum("fat"),
    saturates: sum("saturates"),
    carbohydrate,
    // Carbohydrate is found by difference, so that sugars can come out a little higher; a part is not more than its whole.
    sugars: carbohydrate.complete ? { ...sugars, value: Math.min(sugars.value, carbohydrate.value) } : sugars,
    fibre: sum("fibre"),
    protein: sum("protein"),
    salt: sum("salt"),
  };
};

/** What could not move a figure by more than this part of it is not named as missing; labels are allowed a fifth. */
const trifling = 0.02;

// No food gives more than pure fat does, and a gram holds at most a gram.
const mostPerGram = (of: keyof LabelNutrients): number => {
  if (of === "kilojoules") return energyFactors.kilojoules.fat;
  return of === "kilocalories" ? energyFactors.kilocalories.fat : 1;
};

/** The values of 100 g as EU and UK labels mean them: carbohydrate less fibre, energy by the factors of Annex XIV. */
export const labelNutrients = (food: Food): LabelNutrients => {
  const n = food.nutrients;
  const saturates = partOf(n.saturates, n.fat);
  const sugars = partOf(n.sugars, n.carbohydrate);
  const fibre = partOf(n.fibre, n.carbohydrate);
  const carbohydrate = n.carbohydrate === null || fibre === null ? null : Math.max(0, n.carbohydrate - fibre);
  // The table states alcohol where there is some to state; a food that is or holds it and has no figure is unknown.
  const alcohol = n.alcohol ?? (food.diet.includes("alcohol") ? null : 0);
  const giving =
    carbohydrate === null || n.protein === null || n.fat === null || fibre === null || alcohol === null
      ? null
      : { carbohydrate, protein: n.protein, fat: n.fat, fibre, alcohol };
  return {
    fat: n.fat,
    saturates,
    carbohydrate,
    sugars,
    fibre,
    protein: n.protein,
    salt: n.sodium === null ? null : saltOfSodium(n.sodium),
    alcohol,
    kilojoules: giving === null ? null : energyForLabelEu(giving, "kilojoules"),
    kilocalories: giving === null ? null : energyForLabelEu(giving, "kilocalories"),
  };
};

// Where there is nothing of the whole, there is nothing of its part, though the table leaves the part blank.
const partOf = (part: number | null, whole: number | null): number | null => part ?? (whole === 0 ? 0 : null);

/** Every figure times a factor; what is missing stays missing. */
export const scaleNutrition = (facts: NutritionFacts, factor: number): NutritionFacts => {
  const times = (sum: KnownSum): KnownSum => ({ ...sum, value: sum.value * factor });
  return {
    kilojoules: times(facts.kilojoules),
    kilocalories: times(facts.kilocalories),
    fat: times(facts.fat),
    saturates: times(facts.saturates),
    carbohydrate: times(facts.carbohydrate),
    sugars: times(facts.sugars),
    fibre: times(facts.fibre),
    protein: times(facts.protein),
    salt: times(facts.salt),
  };
};
