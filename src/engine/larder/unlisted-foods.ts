import type { Dish, Step } from "../model/dish.ts";
import type { Food, FoodId } from "../model/food.ts";
import type { Span } from "../model/span.ts";
import { firstOfFoodNames, foodById, foodByName } from "./foods.ts";
import { withMadeOf } from "./made-of.ts";
import { normaliseName } from "./normalise-name.ts";
import { singularsOf } from "./plural.ts";

/** A food that the method names and the list does not: "melt a knob of butter". */
export type UnlistedFood = { readonly food: Food; readonly name: string; readonly span: Span };

const longest = 4;

/**
 * Foods with an allergen or a diet fact that stand in the steps and nowhere on the list, each once. It errs towards
 * saying too much: a name of the dish, of a part, of a swap or of a listed food is passed over, and so are compounds
 * in the method, which are mostly what it makes; at the pass they are mostly what is added.
 */
export const unlistedFoods = (dish: Dish): readonly UnlistedFood[] => {
  const listed = listedFoods(dish);
  const said = saidWords(dish);
  const listedOfKind = (kind: Food): boolean => [...listed].some((id) => isOfKind(foodById(id), kind));
  const found = new Map<FoodId, UnlistedFood>();
  for (const step of dish.steps)
    for (const mention of mentionsIn(step)) {
      const { food, words } = mention;
      const covered =
        listed.has(food.id) ||
        words.some((word) => said.has(word)) ||
        (kinds.has(food.id) && listedOfKind(food));
      const made = food.madeOf.length > 0 && step.phase === "method";
      if (!covered && !made && speaksOf(food) && !found.has(food.id))
        found.set(food.id, { food, name: mention.name, span: mention.span });
    }
  return [...found.values()];
};

/** Names of a whole kind, which a method uses for the one that is listed: "the cheese", "the meat". */
const kinds: ReadonlySet<FoodId> = new Set([
  "meat",
  "cheese",
  "fish",
  "seafood",
  "stock",
  "pasta",
  "nut",
  "egg-yolk",
  "egg-white",
  "game",
  "beef",
  "pork",
  "lamb",
  "chicken",
  "baking-fat",
  "sausage-meat",
  "chocolate",
]);

const isOfKind = (food: Food | null, kind: Food): boolean =>
  food !== null &&
  kind.diet.every((fact) => food.diet.includes(fact)) &&
  kind.allergens.every((a) => a.grade === "check" || food.allergens.some((b) => b.group === a.group));

const speaksOf = (food: Food): boolean =>
  food.diet.length > 0 || food.allergens.some((a) => a.grade !== "check");

const listedFoods = (dish: Dish): ReadonlySet<FoodId> =>
  new Set(
    [
      ...dish.ingredients.flatMap((i) => [i.food, ...i.alternatives.map((other) => other.food)]),
      ...dish.swaps.flatMap((swap) => swap.comes.map((c) => c.food)),
    ].flatMap((id) => {
      const food = id === null ? null : foodById(id);
      return food === null ? [] : withMadeOf(food).map((held) => held.food.id);
    }),
  );

const oneForm = (word: string): string => singularsOf(word)[0] ?? word;

const wordsOf = (text: string): readonly string[] =>
  normaliseName(text)
    .split(/[^a-z']+/)
    .filter((word) => word !== "")
    .map(oneForm);

/** Words by which the card already speaks of what is on its list, and of what it makes. */
const saidWords = (dish: Dish): ReadonlySet<string> =>
  new Set(
    [
      dish.title,
      ...dish.ingredients.flatMap((i) => [i.name, i.text, i.part ?? ""]),
      ...dish.swaps.map((swap) => swap.text),
      ...dish.steps.flatMap((step) => [step.part ?? "", ...step.actions.map((a) => a.makes ?? "")]),
    ].flatMap(wordsOf),
  );

type Mention = UnlistedFood & { readonly words: readonly string[] };

// In a method these are far more often a verb, a wrapping or a cutter than the food.
const ambiguous = /^(rolls?|wraps?|fat|alcohol|spirits?|cookies?|mince|fish|shells?|steaks?|muffins?)$/;

// "Cream the butter", "beat to a cream". Others that are verbs too (butter, flour, oil) do bring the food in.
const isNoFood = (name: string, before: string, next: string): boolean =>
  ambiguous.test(name) ||
  (name === "cream" && (/^(the|together|until|till|it|them)$/.test(next) || /^an?$/.test(before)));

const mentionsIn = (step: Step): readonly Mention[] => {
  const tokens = [...step.text.matchAll(/[\p{L}][\p{L}'’-]*/gu)].map((found) => ({
    text: found[0],
    start: step.span.start + found.index,
  }));
  const mentions: Mention[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    if (!firstOfFoodNames.has(normaliseName(tokens[i]?.text ?? "").split(" ")[0] ?? "")) continue;
    for (let size = Math.min(longest, tokens.length - i); size > 0; size -= 1) {
      const run = tokens.slice(i, i + size);
      const name = normaliseName(run.map((token) => token.text).join(" "));
      const id = foodByName.get(name);
      const food = id === undefined ? null : foodById(id);
      const [first, last] = [run[0], run.at(-1)];
      if (food === null || first === undefined || last === undefined) continue;
      if (!isNoFood(name, wordAt(tokens, i - 1), wordAt(tokens, i + size)))
        mentions.push({
          food,
          name: step.text.slice(
            first.start - step.span.start,
            last.start + last.text.length - step.span.start,
          ),
          span: { start: first.start, end: last.start + last.text.length },
          words: wordsOf(name),
        });
      i += size - 1;
      break;
    }
  }
  return mentions;
};

const wordAt = (tokens: readonly { readonly text: string }[], i: number): string =>
  tokens[i]?.text.toLowerCase() ?? "";
