import { foodById } from "../larder/foods.ts";
import { techniqueById, verbReadings } from "../larder/techniques.ts";
import { handRate } from "../larder/work-rates.ts";
import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Ingredient } from "../model/dish.ts";
import type { FoodId, Technique } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import { waits } from "./kitchen-rates.ts";
import type { Work } from "./work.ts";

/** The cutting and cleaning of one line of the card, for all versions together. */
export type Mise = {
  readonly ingredient: Ingredient;
  /** The cook's verbs in base form, in the order of the words. */
  readonly verbs: readonly string[];
  readonly grams: number;
  readonly minutes: { readonly low: number; readonly likely: number; readonly high: number };
  /** The version whose swap brings it in; null for the lines of the card. What comes for a need is cut on its own. */
  readonly version: string | null;
  /** How long it keeps once done. */
  readonly most: number;
  /** Minutes of it that lay out board and knife, whatever the amount. */
  readonly setUp: number;
};

/** Mise en place that the lines of a card ask for ("peeled and diced"). */
export const miseOf = (work: Work, kitchen: Kitchen): readonly Mise[] => [
  ...fromLines(work, kitchen),
  ...fromSwaps(work, kitchen),
];

/** Vegetables and fruit that a swap brings in are cleaned and cut, though no line says so (common practice, no source). */
const fromSwaps = (work: Work, kitchen: Kitchen): readonly Mise[] =>
  work.versions.flatMap((version) => {
    const out = version.swaps.flatMap((s) => work.dish.swaps[s]?.out ?? []);
    const ingredient = out.flatMap((o) => work.dish.ingredients[o] ?? [])[0];
    return version.ingredients.flatMap((m): readonly Mise[] => {
      const shelf = m.food === null ? null : (foodById(m.food)?.shelf ?? null);
      const fresh = shelf === "vegetables" || shelf === "fruit";
      if (m.ingredient !== null || m.card !== null || !ingredient || !fresh || /cooked/.test(m.name))
        return [];
      const bought = (m.asPurchased?.likely ?? m.edible?.likely ?? 0) / 1000;
      const jobs = ["peel", "chop"].flatMap((id) => techniqueById(id) ?? []);
      const each = jobs.map((technique) => lengthOf(technique, m.food, bought, 0, kitchen));
      const sum = (side: "low" | "likely" | "high"): number => each.reduce((total, e) => total + e[side], 0);
      return [
        {
          ingredient: { ...ingredient, name: m.name, food: m.food },
          version: version.id,
          verbs: ["clean", "cut"],
          grams: m.edible?.likely ?? 0,
          minutes: { low: sum("low"), likely: sum("likely"), high: sum("high") },
          setUp: jobs.reduce((total, technique) => total + technique.setUp, 0),
          most: shelf === "fruit" ? waits.cutFruit : waits.cut,
        },
      ];
    });
  });

const fromLines = (work: Work, kitchen: Kitchen): readonly Mise[] =>
  work.dish.ingredients.flatMap((ingredient): readonly Mise[] => {
    if (ingredient.equipment || ingredient.card !== null) return [];
    const jobs = jobsOf(ingredient);
    if (jobs.length === 0) return [];
    const measured = work.versions.flatMap((v) =>
      v.ingredients.filter((m) => m.ingredient === ingredient.index && m.card === null),
    );
    const grams = measured.reduce((sum, m) => sum + (m.edible?.likely ?? 0), 0);
    const pieces = measured.reduce((sum, m) => sum + (m.pieces?.likely ?? 0), 0);
    if (grams === 0 && pieces === 0) return [];
    const bought = measured.reduce((sum, m) => sum + (m.asPurchased?.likely ?? 0), 0);
    // What is trimmed off is in the hands as well.
    const each = jobs.map(({ technique }) =>
      lengthOf(
        technique,
        ingredient.food,
        (technique.mass === "trims" ? Math.max(bought, grams) : grams) / 1000,
        pieces,
        kitchen,
      ),
    );
    const sum = (side: "low" | "likely" | "high"): number => each.reduce((total, e) => total + e[side], 0);
    const shelf = ingredient.food === null ? null : (foodById(ingredient.food)?.shelf ?? null);
    return [
      {
        ingredient,
        version: null,
        verbs: jobs.map((job) => job.verb),
        grams,
        minutes: { low: sum("low"), likely: sum("likely"), high: sum("high") },
        setUp: jobs.reduce((total, { technique }) => total + technique.setUp, 0),
        most: shelf === "fruit" ? waits.cutFruit : waits.cut,
      },
    ];
  });

const lengthOf = (
  technique: Technique,
  food: FoodId | null,
  kilos: number,
  pieces: number,
  kitchen: Kitchen,
): Mise["minutes"] => {
  const rate = handRate(technique, food, kitchen);
  if (rate === null) {
    const { low, likely, high } = technique.minutes;
    return { low: technique.setUp + low, likely: technique.setUp + likely, high: technique.setUp + high };
  }
  const amount = rate.per === "kilo" ? kilos : pieces > 0 ? pieces : kilos * 10;
  const at = (each: number): number => technique.setUp + each * amount;
  const { low, likely, high } = rate.minutes;
  return { low: at(low), likely: at(likely), high: at(high) };
};

type Job = { readonly technique: Technique; readonly verb: string };

/** The work in the words of a preparation, each technique once. */
const jobsOf = (ingredient: Ingredient): readonly Job[] => {
  const words = ingredient.preparation.flatMap((phrase) => phrase.toLowerCase().split(/[^a-zà-ÿ-]+/));
  const found = new Map<string, Job>();
  for (const word of words) {
    // Only what has been done to it is work: "boned" is, "bone in" is not.
    const reading = verbReadings(word).find((r) => r.form === "past" && r.tail.length === 0);
    const technique = reading?.technique;
    if (technique && technique.station === "hands" && technique.heat === "none")
      found.set(technique.id, { technique, verb: reading.verb });
  }
  for (const id of portionJobs[ingredient.portion ?? ""] ?? []) {
    const technique = techniqueById(id);
    if (technique) found.set(id, { technique, verb: id });
  }
  return [...found.values()];
};

/** What has to be done to get a part of a food alone. */
const portionJobs: { readonly [portion: string]: readonly string[] } = {
  juice: ["squeeze"],
  zest: ["zest"],
  yolk: ["separate"],
  white: ["separate"],
};

export const estimateOf = (m: Mise["minutes"]) => ({
  ...exactly(minutes(m.likely)),
  low: minutes(m.low),
  high: minutes(m.high),
});
