import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import { foodById } from "../../larder/foods.ts";
import type { Dish } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { nameIndexOf } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import { listedWords, nearlyListed } from "./listed-words.ts";
import { type MadeHere, madeHere } from "./made-here.ts";
import type { Rule } from "./rule.ts";
import { type Unlisted, unlistedFirst, unlistedIn } from "./unlisted-foods.ts";

/** Foods that the method takes up and that stand on no line of the list. */
export const usedNotListed: Rule = {
  code: "used-not-listed",
  check: (dish) => {
    if (dish.ingredients.length === 0) return [];
    const names = nameIndexOf(dish.ingredients);
    const listed = new Set(dish.ingredients.flatMap((i) => [i.food, ...i.alternatives.map((a) => a.food)]));
    const made = madeHere(dish);
    const found = new Map<string, Unlisted>();
    for (const step of dish.steps) {
      if (step.phase === "to-serve") continue;
      for (const one of [
        ...unlistedIn(step, names, listed, made),
        ...unlistedFirst(step, names, listed, made),
      ])
        if (!found.has(one.food.id) && !isOnList(dish, one, made)) found.set(one.food.id, one);
    }
    const all = [...found.values()];
    // What is in every kitchen is often left off a list: one note for all of it.
    const small = all.filter((u) => isEveryday(u.food.id));
    return [
      ...all.filter((u) => !isEveryday(u.food.id)).map((u) => say(dish, u, [u])),
      ...small.slice(0, 1).map(
        (u): Finding => ({
          ...say(dish, u, small),
          severity: "note",
        }),
      ),
    ];
  },
};

const say = (dish: Dish, unlisted: Unlisted, all: readonly Unlisted[]): Finding => {
  const at = dish.ingredients.at(-1)?.span.end ?? 0;
  const lines = all.map((u) => `\n${toldAmount(dish, u) ?? "some"} ${u.name}`).join("");
  return makeFinding(
    "used-not-listed",
    dish.source,
    { start: unlisted.start, end: unlisted.end },
    { name: all.map((u) => u.name).join(", "), food: unlisted.food.name },
    { fixes: [{ kind: "add-ingredient", edits: [{ span: { start: at, end: at }, text: lines }] }] },
  );
};

const stated =
  /(?:(?:\d+\s+)?\d+[/\u2044]\d+|\d*\s*[½¼¾⅓⅔]|\d+(?:[.,]\d+)?)\s*(?:kg|g|ml|l|litres?|tbsps?|tsps?|tablespoons?|teaspoons?|cups?|oz|ounces?|lbs?|pounds?|cloves?|sprigs?|slices?)?(?=\s+(?:of\s+)?(?:the\s+)?$)/iu;

/**
 * The amount that the method gives with the food; null when it gives none. The line then says "some", which is read as
 * an amount that nobody told, and is said so.
 */
const toldAmount = (dish: Dish, unlisted: Unlisted): string | null =>
  stated.exec(dish.text.slice(Math.max(0, unlisted.start - 40), unlisted.start))?.[0].trim() ?? null;

/** On the list after all: in a line that was read otherwise, misspelt, or by the name of its kind ("the pork" of "pork loin"). */
const isOnList = (dish: Dish, { name, food }: Unlisted, { title }: MadeHere): boolean => {
  const stems = name
    .toLowerCase()
    .split(/[\s-]+/)
    .map(stem);
  if (isWholeTitle(title, stems, food)) return true;
  const words = listedWords(dish);
  if (stems.every((w) => words.has(w)) || nearlyListed(dish).has(food.id)) return true;
  const only = stems.length === 1 ? (stems[0] ?? "") : "";
  if (!/^(?:pork|chicken|beef|lamb|fish)$/.test(only)) return false;
  return dish.ingredients.some(
    (i) =>
      new RegExp(`${only}\\w`, "i").test(i.text) ||
      (i.food !== null && foodById(i.food)?.diet.some((fact) => fact === only) === true),
  );
};

/** "The gnocchi" of a card for gnocchi. Mussels in cider are on the list all the same, and so is couscous with lamb. */
const isWholeTitle = (title: readonly string[], stems: readonly string[], food: Food): boolean => {
  if (stems.length > 1) return stems.every((w) => title.includes(w));
  if (title.at(-1) !== stems[0]) return false;
  return (!grown.has(food.shelf) && !neverMade.has(food.id)) || /^chill?i$/.test(stems[0] ?? "");
};

// Dry goods that no kitchen makes: where the title names them, they must be bought.
const neverMade: ReadonlySet<string> = new Set(
  "couscous bulgur-wheat quinoa pearl-barley lentil red-lentil green-lentil puy-lentil".split(" "),
);

const grown: ReadonlySet<string> = new Set("vegetables fruit herbs meat poultry fish eggs".split(" "));
