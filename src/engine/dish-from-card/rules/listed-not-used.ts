import { makeFinding } from "../../findings/make-finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import { firstOfFoodNames, foodById, foodByName } from "../../larder/foods.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import type { Shelf } from "../../model/food.ts";
import { nameAt } from "../steps/find-mentions.ts";
import { nameIndexOf } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import { nearlyListed } from "./listed-words.ts";
import type { Rule } from "./rule.ts";
import { stepTokens } from "./step-tokens.ts";

/** Lines of the list that the method never takes up. Optional lines and lines with a purpose of their own are left alone. */
export const listedNotUsed: Rule = {
  code: "listed-not-used",
  check: (dish) => {
    const actions = dish.steps.flatMap((s) => s.actions);
    const used = new Set(actions.flatMap((a) => a.uses.map((u) => u.ingredient)));
    // A method that takes up hardly anything was not understood; saying so of each line would help nobody.
    const taken = dish.ingredients.filter((i) => used.has(i.index)).length;
    if (taken * 2 < dish.ingredients.length) return [];
    const named = namedInMethod(dish);
    const isTaken = (i: Ingredient): boolean => used.has(i.index) || named.has(i.index);
    const method = methodOf(dish);
    const nearly = nearlyNamed(dish, method);
    const said = new Set<number>();
    return dish.ingredients
      .filter((i) => {
        if (isTaken(i) || excused(i) || nearly.has(i.index) || said.has(i.span.start)) return false;
        if (
          isTitled(dish, i) ||
          isMeant(dish, i, method) ||
          dish.ingredients.some((o) => isEither(i, o) && isTaken(o))
        )
          return false;
        said.add(i.span.start);
        return true;
      })
      .map((i) =>
        makeFinding(
          "listed-not-used",
          dish.source,
          i.span,
          { name: i.name },
          {
            fixes: [{ kind: "remove-ingredient", edits: [{ span: lineOf(dish.text, i), text: "" }] }],
          },
        ),
      );
  },
};

type Method = {
  readonly words: readonly string[];
  readonly known: ReadonlySet<string>;
  readonly joined: string;
};

const methodOf = (dish: Dish): Method => {
  const words: string[] = [];
  for (const step of dish.steps)
    for (const token of stepTokens(step)) if (token.kind === "word") words.push(token.stem);
  return { words, known: new Set(words), joined: words.join("") };
};

/** Foods of the table that the method names by one word or two. */
const foodsIn = ({ words }: Method): ReadonlySet<string> => {
  const foods = new Set<string>();
  words.forEach((word, k) => {
    if (!firstOfFoodNames.has(word)) return;
    for (const name of [word, `${word} ${words[k + 1]}`]) {
      const food = foodByName.get(name);
      if (food !== undefined) foods.add(food);
    }
  });
  return foods;
};

/** Lines whose name is in no table, and looks like that of a food which the method names. */
const nearlyNamed = (dish: Dish, method: Method): ReadonlySet<number> => {
  const near = [...nearlyListed(dish)];
  if (near.length === 0) return new Set();
  const foods = foodsIn(method);
  return new Set(near.flatMap(([food, lines]) => (foods.has(food) ? lines : [])));
};

/** What cooks call by what it does, and by which foods it is meant. */
const byUse: readonly (readonly [word: string, meant: RegExp])[] = [
  ["flavouring", /extract|essence|vanilla|zest|rind|liqueur|rum|brandy/],
  ["flavoring", /extract|essence|vanilla|zest|rind|liqueur|rum|brandy/],
  ["liquor", /wine|brandy|rum|whisk|sherry|liqueur/],
  ["noodle", /noodle|pasta/],
  ["seed", /seed|sesame|linseed/],
  ["seasoning", /mustard|lemon|onion juice|anchov|vinegar|sugar|honey|cheese|sauce/],
];

const byShelf: readonly (readonly [word: string, shelf: Shelf])[] = [
  ["vegetable", "vegetables"],
  ["veg", "vegetables"],
  ["seafood", "fish"],
  ["fruit", "fruit"],
];

/**
 * A line that the words may mean without its name: by what it does, by a kind that is said of all ("the spices"), or by
 * the head of its name where no other line of that head is named in full.
 */
const isMeant = (dish: Dish, i: Ingredient, { words, known, joined }: Method): boolean => {
  const has = (word: string): boolean => known.has(word);
  const name = `${i.name} ${i.food === null ? "" : (foodById(i.food)?.name ?? "")}`.toLowerCase();
  const shelf = i.food === null ? null : (foodById(i.food)?.shelf ?? null);
  if (/\b(?:any|your choice|desired|optional|choose)\b/i.test(i.text)) return true;
  const small = shelf === "spices" || shelf === "herbs";
  if (small && ["spice", "seasoning", "herb", "aromatic"].some(has)) return true;
  if (byShelf.some(([word, at]) => has(word) && shelf === at)) return true;
  if (byUse.some(([word, meant]) => has(word) && meant.test(name))) return true;
  const own = i.name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .map(stem);
  // "Bayleaf", "corn flour", "bicarbonate".
  const close = own.join("");
  if (close.length >= 6 && joined.includes(close)) return true;
  const head = own.at(-1) ?? "";
  if (head.length < 4 || own.length < 2 || !known.has(head)) return false;
  const others = dish.ingredients
    .filter((o) => o !== i)
    .map((o) =>
      o.name
        .toLowerCase()
        .split(/[^\p{L}]+/u)
        .map(stem),
    )
    .filter((o) => o.at(-1) === head && o.length > 1);
  return words.some((w, k) => w === head && !others.some((o) => o.at(-2) === words[k - 1]));
};

/** The one meat or fish of a card that is called by it: a terse method need not name it. */
const isTitled = (dish: Dish, i: Ingredient): boolean => {
  const isMain = (o: Ingredient): boolean =>
    o.food !== null && /^(?:meat|poultry|fish)$/.test(foodById(o.food)?.shelf ?? "");
  const title = dish.title
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .map(stem);
  const own = i.name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .map(stem);
  return isMain(i) && own.some((w) => title.includes(w)) && dish.ingredients.filter(isMain).length === 1;
};

/** Two foods of one line, or of one text: "lard or butter", "wine and brandy, mixed". */
const isEither = (a: Ingredient, b: Ingredient): boolean =>
  a !== b && a.span.start === b.span.start && /\bor\b|\/|\bmixed\b|\be\.g/i.test(a.text);

const excused = (i: Ingredient): boolean =>
  i.optional || i.equipment || i.purpose !== null || i.name.trim() === "" || isEveryday(i.food);

/** Lines whose name stands anywhere in the method, in a cue or a remark perhaps. */
const namedInMethod = (dish: Dish): ReadonlySet<number> => {
  const names = nameIndexOf(dish.ingredients);
  const found = new Set<number>();
  for (const step of dish.steps) {
    const tokens = stepTokens(step);
    for (let i = 0; i < tokens.length; i += 1) {
      const hit = nameAt(tokens, i, names);
      for (const c of hit?.candidates ?? [])
        if (c.strength >= (hit?.candidates[0]?.strength ?? 0) - 0.05) found.add(c.ingredient);
    }
  }
  return found;
};

/** The whole line with its line break, when nothing else stands on it. */
const lineOf = (text: string, i: Ingredient): { start: number; end: number } => {
  const start = text.lastIndexOf("\n", Math.max(0, i.span.start - 1)) + 1;
  const stop = text.indexOf("\n", i.span.end);
  const end = stop < 0 ? text.length : stop + 1;
  const rest = text.slice(start, i.span.start) + text.slice(i.span.end, stop < 0 ? text.length : stop);
  return /^[\s*•\-–]*$/.test(rest) ? { start, end } : i.span;
};
