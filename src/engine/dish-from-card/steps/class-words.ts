import { foodById } from "../../larder/foods.ts";
import type { Ingredient } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";

/** A word that stands for several ingredients ("the vegetables", "dry ingredients"); `members` are places in the list. */
type ClassMention = {
  readonly kind: "class" | "all" | "rest";
  /** The words are "dry" or "wet": they may mean what was mixed of them before. */
  readonly mixed?: "wet" | "dry";
  readonly members: readonly number[];
  readonly from: number;
  readonly to: number;
};

type Test = (ingredient: Ingredient, food: Food | null) => boolean;

const named =
  (pattern: RegExp): Test =>
  (ingredient, food) =>
    pattern.test(ingredient.name.toLowerCase()) || (food !== null && pattern.test(food.name));

const wetNames =
  /\b(milk|water|eggs?|yolks?|whites?|oil|juice|vanilla|extract|yogh?urt|cream|buttermilk|honey|syrup|stock|wine|vinegar|beer|cider|melted butter|essence|rum|sauce)\b/;
const dryNames =
  /\b(flours?|sugar|baking powder|bicarbonate|baking soda|bread soda|soda|salt|cocoa|oats?|cornflour|cornstarch|semolina|polenta|spices?|cinnamon|ginger|nutmeg|yeast|almonds?|powder|cornmeal|cream of tartar|pepper|paprika|cumin|mixed spice|allspice|cloves)\b/;
const wet: Test = (i, f) =>
  wetNames.test(i.name.toLowerCase()) || i.state.includes("melted") || f?.shelf === "drinks";
const dry: Test = (i, f) =>
  !/\b(butter|milk|cream|extract|syrup|juice)\b/.test(i.name.toLowerCase()) &&
  (named(dryNames)(i, f) || f?.shelf === "spices");

const spices: Test = (i, f) =>
  (f?.shelf === "spices" && !/\b(salt)\b/.test(f.name)) ||
  named(
    /\b(cumin|coriander seeds?|cinnamon|turmeric|paprika|garam masala|cardamom|cloves|nutmeg|star anise|mace|chilli powder|chili powder|curry powder|allspice|fennel seeds?|mustard seeds?|cayenne)\b/,
  )(i, f);
const herbs: Test = (i, f) =>
  f?.shelf === "herbs" ||
  named(/\b(parsley|thyme|basil|dill|chives?|rosemary|sage|tarragon|oregano|mint|chervil|cilantro|bay)\b/)(
    i,
    f,
  );
const vegetables: Test = (i, f) =>
  f !== null
    ? f.shelf === "vegetables"
    : named(
        /\b(onions?|carrots?|celery|leeks?|potato(es)?|peppers?|courgettes?|zucchini|aubergines?|tomato(es)?|cabbage|broccoli|peas|beans|mushrooms?|spinach|parsnips?|turnips?|swede|squash)\b/,
      )(i, f);

const classes: Readonly<Record<string, Test>> = {
  vegetable: vegetables,
  veg: vegetables,
  veggie: vegetables,
  veggies: vegetables,
  spice: spices,
  herb: herbs,
  aromatics: named(/\b(onions?|shallots?|garlic|ginger|celery|leeks?)\b/),
  aromatic: named(/\b(onions?|shallots?|garlic|ginger|celery|leeks?)\b/),
  seasoning: (i, f) => spices(i, f) || named(/\b(salt|pepper)\b/)(i, f),
  meat: (i, f) =>
    (f?.diet.includes("meat") === true || f?.diet.includes("poultry") === true) &&
    !/\b(stock|broth|bouillon|gravy|gelatine?|fat|dripping|lard|consomme)\b/.test(i.name.toLowerCase()),
  fish: (_, f) => f?.diet.includes("fish") === true && f.shelf === "fish",
  seafood: (_, f) => f?.shelf === "fish",
  shellfish: (_, f) => f?.diet.includes("shellfish") === true,
  fruit: (_, f) => f?.shelf === "fruit",
  nut: (_, f) => f?.allergens.some((a) => a.group === "nuts" || a.group === "peanuts") === true,
  seed: named(/\bseeds?\b/),
  cheese: (i, f) =>
    named(/cheese|cheddar|parmesan|gruyere|mozzarella|feta|pecorino|ricotta|mascarpone/)(i, f),
  bean: named(/\bbeans?\b/),
  berry: named(/berr(y|ies)\b/),
  mushroom: named(/\bmushrooms?\b/),
};

const testOf: ReadonlyMap<string, Test> = new Map(Object.entries(classes));

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

/** The members of each class on a card's list, looked up once. */
export type ClassIndex = {
  readonly membersOf: (word: string) => readonly number[];
  readonly wet: readonly number[];
  readonly dry: readonly number[];
  readonly all: readonly number[];
};

/** Sorts the ingredients of a card into classes; a class is worked out when it is first asked for. */
export const classIndexOf = (ingredients: readonly Ingredient[]): ClassIndex => {
  const foods = ingredients.map((i) => (i.food === null ? null : foodById(i.food)));
  const kept = new Map<string, readonly number[]>();
  const filter = (key: string, test: Test): readonly number[] => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const found = ingredients.filter((x, k) => !x.equipment && test(x, foods[k] ?? null)).map((x) => x.index);
    kept.set(key, found);
    return found;
  };
  return {
    membersOf: (noun) => {
      const test = testOf.get(noun);
      return test === undefined ? [] : filter(noun, test);
    },
    get wet() {
      return filter("wet ", wet);
    },
    get dry() {
      return filter("dry ", dry);
    },
    get all() {
      return filter("all ", () => true);
    },
  };
};

/** The class word at a place ("the remaining ingredients", "spices"); null when none stands there. */
export const classAt = (
  tokens: readonly Token[],
  i: number,
  index: ClassIndex,
  partMembers: (noun: string) => readonly number[],
  stem: (word: string) => string,
): ClassMention | null => {
  const here = word(tokens, i);
  if (here.startsWith("ingredien") && /^(ingredients?|ingredience)$/.test(here)) {
    const back = [1, 2, 3, 4].map((k) => word(tokens, i - k));
    const [one = ""] = back;
    if (one === "dry") return { kind: "class", mixed: "dry", members: index.dry, from: i - 1, to: i + 1 };
    if (/^(wet|liquid)$/.test(one))
      return { kind: "class", mixed: "wet", members: index.wet, from: i - 1, to: i + 1 };
    if (back.some((w) => /^(remaining|rest|other|remainder)$/.test(w)))
      return { kind: "rest", members: index.all, from: i, to: i + 1 };
    // "the first five ingredients": in the order of the list.
    const first = back.indexOf("first");
    const count = first === 1 ? numberAt(tokens, i - 1) : null;
    if (count !== null && count.value >= 2)
      return { kind: "class", members: index.all.slice(0, Math.round(count.value)), from: i - 2, to: i + 1 };
    const part = partMembers(one);
    if (part.length > 0) return { kind: "class", members: part, from: i - 1, to: i + 1 };
    const some = back.some((w) => /^(these|those|first|above|following)$/.test(w));
    return some ? null : { kind: "all", members: index.all, from: i, to: i + 1 };
  }
  // "Add the wet to the dry."
  if ((here === "wet" || here === "dry") && word(tokens, i - 1) === "the") {
    const next = tokens[i + 1];
    const alone =
      next === undefined || next.kind === "mark" || /^(to|into|and|with|in|mix|mixture)$/.test(next.text);
    if (alone && here === "dry")
      return { kind: "class", mixed: "dry", members: index.dry, from: i, to: i + 1 };
    if (alone) return { kind: "class", mixed: "wet", members: index.wet, from: i, to: i + 1 };
  }
  // "Reserve the liquid", "the cooking liquid" lie in the pot; "add the liquids" stand on the list.
  if (here === "liquids" && index.wet.length > 0)
    return { kind: "class", members: index.wet, from: i, to: i + 1 };
  const members = index.membersOf(stem(here));
  if (members.length === 0) return null;
  if (
    /^(stock|broth|oil|soup|mixture|mix|bouillon|fat|paste|dish|peeler|sauce|cake|cakes|crumble)$/.test(
      word(tokens, i + 1),
    )
  )
    return null;
  return { kind: "class", members, from: i, to: i + 1 };
};
