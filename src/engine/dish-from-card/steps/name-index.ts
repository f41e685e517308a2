import { foodById, hasOwnFoods } from "../../larder/foods.ts";
import { normaliseName } from "../../larder/normalise-name.ts";
import { keptByText } from "../../measure/kept-by-text.ts";
import type { Ingredient } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { stem } from "./stem.ts";

/** An ingredient that some words may mean; the greater the strength, the surer. */
export type Named = { readonly ingredient: number; readonly strength: number };

/** Stemmed words, joined by spaces, and the ingredients they may mean, surest first. */
export type NameIndex = ReadonlyMap<string, readonly Named[]>;

// Heads that only say which part or form of the food is meant: "garlic cloves" may be called "garlic".
const formHeads = new Set(
  (
    "leaf clove seed pod extract essence powder thigh breast fillet leg wing drumstick mince chop steak shoulder loin " +
    "belly joint cheese stick root bulb head sprig bunch juice zest rind peel flake piece chunk slice cube lardon rasher " +
    "bean nut floret spear stalk crumb pasta noodle rice bread sausage ham tail cheek shank neck bone rib cutlet loaf " +
    "paste berry ball ring sheet bud kernel half segment tenderloin tip roast fish meat granule chip liqueur pepper " +
    "potato mushroom onion tomato sugar flour lentil pea oats biscuit bouillon cracker squash cabbage lettuce wine"
  ).split(" "),
);

// Words before the food that say how, not what.
const plainWords = new Set(
  (
    "a an the of and or large small medium big fresh dried ground whole plain white brown red green black yellow hot cold " +
    "warm soft hard ripe raw cooked lean thick thin fine coarse good quality free range organic unsalted salted smoked " +
    "sweet dark light extra virgin pure strong self raising all purpose baby mini frozen tinned canned chopped sliced " +
    "grated crushed minced diced peeled boneless skinless golden single double heavy sour full fat low baking heaped level " +
    "few little some your favourite flat leaf wild mixed flaky table sea rock kosher new old spring to taste for"
  ).split(" "),
);

// A head that makes another food of its first word: "chicken stock" is no chicken.
const otherHeads = new Set(
  "stock broth sauce oil vinegar milk butter cream ketchup soup mix dressing spread cube syrup water gravy custard".split(
    " ",
  ),
);

// Names by which cooks call what a line lists under a narrower name.
const classNames: readonly (readonly [name: string, members: RegExp])[] = [
  [
    "pasta",
    /\b(spaghetti|penne|macaroni|fusilli|rigatoni|linguine|tagliatelle|lasagne|orzo|fettuccine|farfalle|noodle)\b/,
  ],
  ["noodle", /\b(spaghetti|linguine|ramen|udon|vermicelli|macaroni)\b/],
  [
    "cheese",
    /\b(cheddar|parmesan|gruyere|mozzarella|feta|pecorino|emmental|stilton|halloumi|ricotta|mascarpone|gorgonzola|parmigiano|paneer)\b/,
  ],
  ["stock", /\b(bouillon|broth)\b/],
  ["broth", /\b(stock|bouillon)\b/],
  [
    "herb",
    /\b(parsley|thyme|basil|dill|chive|coriander|rosemary|sage|tarragon|oregano|mint|chervil|cilantro|bay leaf)\b/,
  ],
  ["mince", /\b(ground|minced) (beef|lamb|pork|turkey|chicken|meat)\b|\b(beef|lamb|pork|turkey) mince\b/],
  ["beef", /\bground beef\b|\bsteak\b|\bbrisket\b/],
  ["bacon", /\b(lardon|pancetta|guanciale)\b/],
  ["chilli", /\b(chili|chile|jalapeno)\b/],
  ["scallion", /\bspring onion\b/],
  ["spring onion", /\bscallion\b/],
  ["rice", /\b(arborio|basmati|risotto)\b/],
  ["roux", /^$/],
  ["prawn", /\bshrimp\b/],
  ["shrimp", /\bprawn\b/],
  ["egg", /\b(yolk|egg white)\b/],
  ["berry", /berry\b/],
  ["nut", /\b(almond|walnut|hazelnut|pecan|cashew|pistachio|peanut)\b/],
  ["wine", /\b(sherry|marsala|madeira|vermouth)\b/],
  ["oil", /\boil\b/],
  ["garlic", /\bgarlic\b/],
  ["lemon", /\blemon\b/],
  ["lime", /\blime\b/],
  ["orange", /\borange\b/],
  ["sweetcorn", /\bcorn\b/],
  ["yeast", /\byeast\b/],
  ["gelatin", /\bgelatine\b/],
  ["gelatine", /\bgelatin\b/],
  ["steak", /\bsteak\b/],
  [
    "meat",
    /\b(beef|pork|lamb|veal|mutton|venison|chicken|turkey|mince|steak|brisket|oxtail|rabbit|duck|ham|sausage)\b/,
  ],
  [
    "fish",
    /\b(cod|salmon|haddock|trout|tuna|halibut|mackerel|sea bass|plaice|sole|pollock|hake|turbot|bream|tilapia|monkfish)\b/,
  ],
  ["chocolate", /\bchocolate\b/],
  ["spud", /\bpotato\b/],
  ["beet", /\bbeetroot\b/],
  ["beetroot", /\bbeet\b/],
];

const animals = new Set(["meat", "fish", "beef", "prawn", "shrimp"]);
const anyMember = new RegExp(
  classNames
    .map(([, members]) => members.source)
    .filter((s) => s !== "^$")
    .join("|"),
);
const mostKept = 5000;

/** The class names that words may be called by; most have none. */
const classesOf = keptByText(
  (words): readonly string[] =>
    anyMember.test(words) ? classNames.flatMap(([name, m]) => (m.test(words) ? [name] : [])) : [],
  mostKept,
);

/** The stemmed words of a name, without figures. */
const clean = keptByText(
  (name): readonly string[] =>
    normaliseName(name)
      .replace(/[^\p{L}\p{N} ']/gu, " ")
      .split(" ")
      .filter((w) => w !== "" && !/^\d/.test(w))
      .map(stem),
  mostKept,
);

const foodKeys = new WeakMap<Food, readonly string[]>();

/** The stemmed names of a food of the table; worked out once for each. */
const foodKeysOf = (food: Food): readonly string[] => {
  const known = foodKeys.get(food);
  if (known !== undefined) return known;
  const keys = [
    ...new Set([food.name, food.plural, food.nameUs ?? "", ...food.aliases].map((n) => clean(n).join(" "))),
  ];
  foodKeys.set(food, keys);
  return keys;
};

/** "greens", "whites": a plural that is a food though its singular only says how a food looks; null for none. */
const rawPlural = (name: string): string | null => {
  const last = /(\p{L}+)\s*$/u.exec(name.toLowerCase())?.[1] ?? "";
  if (last === "fat") return "=fat";
  return last.endsWith("s") && plainWords.has(stem(last)) && last !== stem(last) ? `=${last}` : null;
};

const birds =
  /^(pheasant|chicken|duck|duckling|goose|turkey|partridge|grouse|pigeon|fowl|poussin|quail|rabbit|hare)$/;
const cutBird =
  /\b(?:breasts?|thighs?|legs?|wings?|drumsticks?|minced?|livers?|diced|cooked|shredded|leftover|roast|fillets?|joints?|pieces|portions)\b/i;

/** The parts of a whole bird or rabbit that go their own ways once it is jointed. */
export const birdParts: readonly string[] = ["leg", "thigh", "breast", "wing", "carcass"];

/** The parts that cooks take of a food that is listed whole: yolks and whites of eggs, zest and juice of citrus. */
export const portionsIn = (ingredient: Ingredient): readonly string[] => {
  if (ingredient.portion !== null || ingredient.equipment) return [];
  const words = clean(ingredient.name);
  const head = words.at(-1) ?? "";
  if (head === "egg") return ["yolk", "white"];
  if (birds.test(head) && !cutBird.test(ingredient.name)) return birdParts;
  return /^(lemon|lime|orange|grapefruit|clementine|mandarin)$/.test(head) ? ["zest", "rind", "juice"] : [];
};

type Key = readonly [key: string, strength: number];

const keysKept = new Map<string, readonly Key[]>();

/** The keys by which the steps may call an ingredient; the same lines stand on many cards. */
const keysOf = (ingredient: Ingredient): readonly Key[] => {
  if (hasOwnFoods()) return findKeys(ingredient);
  const { name, food, portion, card } = ingredient;
  const line = `${name}\n${food ?? ""}\n${portion ?? ""}\n${card ?? ""}`;
  const known = keysKept.get(line);
  if (known !== undefined) return known;
  if (keysKept.size >= mostKept) keysKept.clear();
  const keys = findKeys(ingredient);
  keysKept.set(line, keys);
  return keys;
};

const findKeys = (ingredient: Ingredient): readonly Key[] => {
  const keys: Key[] = [];
  const words = clean(ingredient.name).filter((w) => w !== "the" && w !== "a");
  const put = (key: string, strength: number): void => {
    if (key !== "") keys.push([key, strength]);
  };
  const joined = words.join(" ");
  put(joined, 5);
  for (const state of ingredient.state) put(`${clean(state).join(" ")} ${joined}`, 5);
  for (let i = 1; i < words.length; i += 1) put(words.slice(i).join(" "), 4 - i * 0.1);
  const of = words.indexOf("of");
  if (of > 0) put(words.slice(of + 1).join(" "), 4);
  const head = words.at(-1) ?? "";
  if (words.length > 1 && formHeads.has(head)) {
    put(words.slice(0, -1).join(" "), 3);
    const modifier = words.at(-2) ?? "";
    if (!plainWords.has(modifier)) put(modifier, 3);
  }
  if (words.length > 1 && !otherHeads.has(head))
    for (const word of words.slice(0, -1)) if (!plainWords.has(word) && word.length > 2) put(word, 1);
  if (words.length > 1 && otherHeads.has(head)) {
    const modifier = words.at(-2) ?? "";
    if (
      /^(soy|tamari|tabasco|worcestershire|hoisin|oyster|sriracha|coconut|almond|balsamic|tomato)$/.test(
        modifier,
      )
    )
      put(modifier, 0.5);
  }
  const food = ingredient.food === null ? null : foodById(ingredient.food);
  if (food !== null) {
    for (const key of foodKeysOf(food)) put(key, 2.5);
    const main = clean(food.name);
    const last = main.at(-1);
    if (main.length > 1 && last !== undefined && !otherHeads.has(last)) put(last, 0.6);
  }
  const bare = rawPlural(ingredient.name);
  if (bare !== null) put(bare, 4);
  for (const portion of portionsIn(ingredient)) {
    const stemmed = portion === "yolk" || birdParts.includes(portion);
    put(stemmed ? portion : `=${portion === "white" ? "whites" : portion}`, 2);
    put(`${head} ${portion}`, 4.9);
    if (birdParts.includes(portion)) put(`${portion} meat`, 4.9);
  }
  if (ingredient.portion !== null) {
    const portion = stem(ingredient.portion);
    // "4 lemons, zest and juice": either of the two is said of it.
    const both = ingredient.portion.split(" and ");
    if (both.length > 1) for (const one of both) put(stem(one), 4);
    put(portion, 4.5);
    put(`${joined} ${portion}`, 5);
    if (portion === "yolk" || portion === "white") put(`egg ${portion}`, 5);
    if (portion === "white") put("=whites", 4.5);
    if (portion === "rind" || portion === "zest" || portion === "peel")
      for (const same of ["rind", "zest", "peel"]) {
        put(same, 4);
        put(`${joined} ${same}`, 5);
      }
  }
  if (ingredient.card !== null) {
    const title = clean(ingredient.card);
    put(title.join(" "), 5);
    for (let i = 1; i < title.length; i += 1) put(title.slice(i).join(" "), 4 - i * 0.1);
  }
  const classes = new Set([...classesOf(joined), ...(food === null ? [] : classesOf(food.name))]);
  if (classes.size > 0)
    for (const [name] of classNames)
      if (classes.has(name) && !(otherHeads.has(head) && animals.has(name))) put(name, 0.4);
  return keys;
};

// Steps, swaps and rules ask for the same list; the index of a list never changes.
const kept = new WeakMap<readonly Ingredient[], NameIndex>();

/** The index of all names by which the steps of a card may call its ingredients. */
export const nameIndexOf = (ingredients: readonly Ingredient[]): NameIndex => {
  const known = kept.get(ingredients);
  if (known !== undefined) return known;
  const index = buildIndex(ingredients);
  kept.set(ingredients, index);
  return index;
};

const buildIndex = (ingredients: readonly Ingredient[]): NameIndex => {
  const best = new Map<string, { readonly ingredient: number; strength: number }[]>();
  const note = (key: string, ingredient: number, strength: number): void => {
    const known = best.get(key);
    if (known === undefined) {
      best.set(key, [{ ingredient, strength }]);
      return;
    }
    // The names of a line are noted together, so that only the last can be of the same line.
    const last = known.at(-1);
    if (last?.ingredient !== ingredient) known.push({ ingredient, strength });
    else if (strength > last.strength) last.strength = strength;
  };
  for (const ingredient of ingredients) {
    if (ingredient.equipment) continue;
    for (const [key, strength] of keysOf(ingredient)) note(key, ingredient.index, strength);
    for (const other of ingredient.alternatives) {
      const words = clean(other.name);
      note(words.join(" "), ingredient.index, 3);
      if (words.length > 1) note(words.at(-1) ?? "", ingredient.index, 1);
    }
  }
  best.delete("");
  for (const word of plainWords) if (word !== "pepper") best.delete(word);
  for (const known of best.values())
    if (known.length > 1) known.sort((a, b) => b.strength - a.strength || a.ingredient - b.ingredient);
  return best;
};
