import { type DishDeclaration, type KnownSum, labelRows, type Region, type WriteUp } from "#engine/index.ts";
import { partHeading, yieldLine } from "#words/write-up-text.ts";

/** How a published card is signed and dated; the tool knows neither by itself. */
type JsonLdExtras = {
  readonly region?: Region;
  readonly author?: string;
  /** ISO 8601 calendar date. */
  readonly datePublished?: string;
  readonly url?: string;
  readonly declaration?: DishDeclaration | null;
};

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/**
 * A write-up as schema.org/Recipe, to be put into a page as JSON-LD. Times are those of the words, in ISO 8601. What is
 * not known is left out: nutrition with a gap in it, and diets that anything unknown could speak against.
 */
export const recipeJsonLd = (
  writeUp: WriteUp,
  extras: JsonLdExtras = {},
): { readonly [key: string]: Json } => {
  const servings = yieldLine(writeUp);
  const nutrition = nutritionOf(extras);
  return {
    "@context": "https://schema.org",
    "@type": "Recipe",
    name: writeUp.title,
    ...(extras.author === undefined ? {} : { author: { "@type": "Person", name: extras.author } }),
    ...(extras.datePublished === undefined ? {} : { datePublished: extras.datePublished }),
    ...(extras.url === undefined ? {} : { url: extras.url }),
    ...(servings === null ? {} : { recipeYield: servings }),
    ...(writeUp.totalMinutes === null ? {} : { totalTime: isoDuration(writeUp.totalMinutes) }),
    recipeIngredient: writeUp.parts.flatMap((part) => part.ingredients.map((i) => i.text)),
    recipeInstructions: instructionsOf(writeUp),
    ...(nutrition === null ? {} : { nutrition }),
    ...(writeUp.diets.length === 0
      ? {}
      : { suitableForDiet: writeUp.diets.map((diet) => `https://schema.org/${diet}`) }),
  };
};

/** Whole minutes as an ISO 8601 duration: 90 → "PT1H30M", 1500 → "P1DT1H", 0 → "PT0M". */
export const isoDuration = (minutes: number): string => {
  const whole = Math.max(0, Math.round(minutes));
  const days = Math.floor(whole / 1440);
  const hours = Math.floor((whole % 1440) / 60);
  const rest = whole % 60;
  const time = `${hours > 0 ? `${hours}H` : ""}${rest > 0 ? `${rest}M` : ""}`;
  const date = days > 0 ? `${days}D` : "";
  if (time === "") return date === "" ? "PT0M" : `P${date}`;
  return `P${date}T${time}`;
};

/** Steps one after another; where the card names parts, each run of steps of one part is a section. */
const instructionsOf = (writeUp: WriteUp): readonly Json[] => {
  const step = (text: string): Json => ({ "@type": "HowToStep", text });
  if (writeUp.steps.every((s) => s.part === null)) return writeUp.steps.map((s) => step(s.text));
  const runs: { part: string | null; texts: string[] }[] = [];
  for (const { part, text } of writeUp.steps) {
    const last = runs.at(-1);
    if (last !== undefined && last.part === part) last.texts.push(text);
    else runs.push({ part, texts: [text] });
  }
  return runs.flatMap(({ part, texts }): readonly Json[] =>
    part === null
      ? texts.map(step)
      : [{ "@type": "HowToSection", name: partHeading(part), itemListElement: texts.map(step) }],
  );
};

/** schema.org/NutritionInformation of one portion; null when nothing of it is whole. */
const nutritionOf = ({
  declaration,
  region = "uk",
}: JsonLdExtras): { readonly [key: string]: Json } | null => {
  if (declaration === undefined || declaration === null) return null;
  const facts = declaration.perPortion;
  const grams = (sum: KnownSum): string | null => (sum.complete ? `${Number(sum.value.toFixed(1))} g` : null);
  const energy = labelRows(facts, region).find((row) => row.nutrient === "kilocalories");
  const carbohydrate = region === "us" ? added(facts.carbohydrate, facts.fibre) : facts.carbohydrate;
  const all: readonly (readonly [string, string | null])[] = [
    ["calories", energy?.complete ? `${energy.figure.value} kcal` : null],
    ["fatContent", grams(facts.fat)],
    ["saturatedFatContent", grams(facts.saturates)],
    ["carbohydrateContent", grams(carbohydrate)],
    ["sugarContent", grams(facts.sugars)],
    ["fiberContent", grams(facts.fibre)],
    ["proteinContent", grams(facts.protein)],
    // Milligrams of sodium; salt is sodium × 2.5.
    ["sodiumContent", facts.salt.complete ? `${Math.round(facts.salt.value * 400)} mg` : null],
  ];
  const known = all.filter((entry): entry is readonly [string, string] => entry[1] !== null);
  if (known.length === 0) return null;
  return { "@type": "NutritionInformation", ...Object.fromEntries(known) };
};

const added = (a: KnownSum, b: KnownSum): KnownSum => ({
  value: a.value + b.value,
  complete: a.complete && b.complete,
  missing: [...a.missing, ...b.missing],
});
