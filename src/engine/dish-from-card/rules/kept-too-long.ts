import { makeFinding } from "../../findings/make-finding.ts";
import { isCookedThrough } from "../../larder/cooked-through.ts";
import { foodById } from "../../larder/foods.ts";
import { limitsFor } from "../../larder/limits.ts";
import type { Dish } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span } from "../../model/span.ts";
import { isPreserved, isRice, rawAnimal } from "./keeps-badly.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { isFlour } from "./whole-weights.ts";

/** The longest, in days in the fridge, and of what. */
type Longest = { readonly name: string; readonly days: number };

/** Fresh stock. Common practice, no source. */
const stockDays = 4;
/** Raw fish and raw mince. Common practice, no source. */
const rawDays = 2;
/** Sauces and creams of egg that is not cooked through. Common practice, no source. */
const eggDays = 2;
/** Custards and creams of cooked egg. Common practice, no source; FDA Food Code 3-501.17 has seven days with the first. */
const custardDays = 5;
/** Cooked fish. Common practice, no source. */
const fishDays = 3;
/** Cooked meat where the region's sheet prints no figure: cook-chill guidance of 1989, the day of eating included; from memory. */
const meatDays = 5;
const perDay = 24 * 60;

/**
 * Keeping in the fridge for longer than is usual for the food: cooked rice (FSA: one day), fresh stock, raw fish and
 * mince, sauces of raw egg, cooked meat and fish (FDA Food Code 3-501.17: seven days with the first). Local codes decide.
 */
export const keptTooLong: Rule = {
  code: "kept-too-long",
  check: (dish, region) => {
    const limit = longestFor(dish, region);
    if (limit === null) return [];
    return keepings(dish).flatMap(({ days, span }) =>
      days <= limit.days * 1.01
        ? []
        : [
            makeFinding(
              "kept-too-long",
              dish.source,
              span,
              { name: limit.name, days, usual: limit.days },
              {
                fixes: [
                  {
                    kind: "add-caution",
                    edits: [replaceWords(span, limit.days === 1 ? "1 day" : `${limit.days} days`)],
                  },
                ],
              },
            ),
          ],
    );
  },
};

// Cured in the cold, and kept as long as what is salted.
const curedFish = /\bgrav(?:ad)?(?:lax|laks)\b/i;

const keepDays = (region: Region, hazard: "cooked-rice" | "raw-meat"): number | null => {
  const minutes = limitsFor(region, "keep", [hazard]).flatMap((row) => row.minutes ?? []);
  return minutes.length === 0 ? null : Math.min(...minutes) / perDay;
};

const longestFor = (dish: Dish, region: Region): Longest | null => {
  if (isPreserved(dish) || curedFish.test(dish.title)) return null;
  const found: Longest[] = [];
  const rice = dish.ingredients.find(isRice);
  if (rice !== undefined && !/pudding/i.test(dish.title))
    found.push({ name: rice.name, days: keepDays(region, "cooked-rice") ?? meatDays });
  if (/\b(?:stock|broth)\b/i.test(dish.title)) found.push({ name: dish.title, days: stockDays });
  for (const i of rawAnimal(dish)) {
    const hazards = i.food === null ? [] : (foodById(i.food)?.hazards ?? []);
    const isFish = hazards.some((h) => h === "raw-fish" || h === "raw-shellfish");
    const isRaw = !isCookedThrough(dish, i.index);
    if (isRaw && (isFish || hazards.includes("raw-mince"))) found.push({ name: i.name, days: rawDays });
    else found.push({ name: i.name, days: isFish ? fishDays : (keepDays(region, "raw-meat") ?? meatDays) });
  }
  const eggs = dish.ingredients.filter(
    (i) =>
      i.food !== null && foodById(i.food)?.hazards.includes("raw-egg") === true && !/pasteuri/i.test(i.text),
  );
  const raw = eggs.find((i) => !isCookedThrough(dish, i.index));
  const baked = /\b(?:cakes?|biscuits?|cookies?|bread|meringues?|tart|pie)\b/i.test(dish.title);
  if (raw !== undefined && !baked) found.push({ name: raw.name, days: eggDays });
  const yolk = eggs.find((i) => /yolk/.test(i.food ?? ""));
  const milk = dish.ingredients.some((i) => /\b(?:milk|cream)\b/.test(i.food?.replaceAll("-", " ") ?? ""));
  const dough = dish.ingredients.some(isFlour);
  if (yolk !== undefined && milk && !baked && !dough) found.push({ name: yolk.name, days: custardDays });
  return found.reduce<Longest | null>(
    (least, l) => (least === null || l.days < least.days ? l : least),
    null,
  );
};

const keeps = /\b(?:keeps?|kept|lasts?|stored?|holds?|refrigerat\w*|fridge|chill(?:ed)?|ahead|good for)\b/i;
const elsewhere = /\bfreez\w*|\bfrozen\b|\bjars?\b.*\bsteril/i;
const length =
  /\b(?:up to |for )?((?:\d+(?:\s*(?:-|–|to|or)\s*\d+)?|a|an|one|two|three|four|five|six|seven|eight|ten|several)\s+(days?|weeks?|fortnights?|months?))\b/gi;
const numbers: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  ten: 10,
  several: 3,
};
const unitDays = (unit: string): number =>
  /^day/i.test(unit) ? 1 : /^week/i.test(unit) ? 7 : /^fort/i.test(unit) ? 14 : 30;

/** Every length of time that the card says it keeps in the fridge, in days, and where that stands. */
const keepings = (dish: Dish): readonly { readonly days: number; readonly span: Span }[] => {
  const clauses: { readonly text: string; readonly start: number }[] = [];
  const add = (text: string, start: number): void => {
    for (const found of text.matchAll(/(?:[^.!?;,]|,(?=\s*(?:for|up to|at most)\b))+/gi)) {
      const at = start + found.index;
      if (keeps.test(found[0]) && !elsewhere.test(found[0]) && !clauses.some((c) => c.start === at))
        clauses.push({ text: found[0], start: at });
    }
  };
  for (const k of dish.keeping) if (k.where === "fridge") add(k.text, k.span.start);
  for (const step of dish.steps)
    if (/\b(?:fridge|refrigerat\w*|chill(?:ed)?)\b/i.test(step.text)) add(step.text, step.span.start);
  return clauses.flatMap(({ text, start }) =>
    [...text.matchAll(length)].slice(0, 1).map((found) => {
      const words = found[1] ?? "";
      const figure = /\d+(?!.*\d)/.exec(words)?.[0];
      const many =
        figure === undefined ? (numbers[words.split(/\s/)[0]?.toLowerCase() ?? ""] ?? 1) : Number(figure);
      const at = start + found.index + found[0].length - words.length;
      return { days: many * unitDays(found[2] ?? "day"), span: { start: at, end: at + words.length } };
    }),
  );
};
