import type { Dish } from "../../model/dish.ts";
import { stem } from "../steps/stem.ts";

// What a card makes of its foods, whatever they are: the dish in hand as often as a food of its own.
const mixtures: readonly string[] =
  "dough batter sauce filling mixture mix custard pastry dressing vinaigrette marinade icing glaze gravy soup jam caramel meringue cake salad stew roux crust topping base paste crumb seasoning liquid bun roll biscuit cookie pie tart burger patty dumpling meatball skin bone leaf peel zest rind stuffing spread dip pizza pancake waffle muffin tortilla roast casserole curry mash pudding jelly ganache frosting mousse sandwich colour color garnish drink pulp shell head tail stalk root lot bit bird brine ice whey bechamel béchamel white".split(
    " ",
  );

const meatWords =
  /meat|beef|lamb|pork|veal|venison|mutton|kid|chicken|turkey|duck|goose|hen|rabbit|hare|steak|chop|loin|shank|shoulder|brisket|oxtail|cheek|rib|joint|mince|sausage|bacon|ham|gammon|chorizo|pancetta|liver|kidney|tongue/;

const poultry = /chicken|turkey|duck|goose|hen|poussin|guinea/;

/** Words for a kind of food that name another line of the list, or what came of one; by what must be on the list. */
const kinds: ReadonlyMap<string, RegExp> = new Map(
  Object.entries({
    egg: /egg|yolk|white/,
    yolk: /egg|yolk/,
    cheese:
      /chees|cheddar|parmesan|parmigiano|gruy|comt|mozzarella|feta|pecorino|emmental|stilton|halloumi|ricotta|mascarpone|gorgonzola|paneer|brie|camembert|taleggio|fontina|manchego|quark/,
    cream: /cream|crème|creme|cr.me|mascarpone/,
    bread: /bread|loaf|baguette|sourdough|bun|roll|toast|ciabatta|focaccia|brioche|pitta|crumb|flour/,
    toast: /bread|loaf|baguette|sourdough|toast|bun|muffin|brioche/,
    stock: /stock|broth|bouillon|\bbones\b|carcass|consomm|giblet|trimmings|\bshells\b/,
    broth: /stock|broth|bouillon|\bbones\b|carcass|consomm|giblet|trimmings|\bshells\b/,
    syrup: /syrup|treacle|molasses|honey|agave|\btins?\b|\bcans?\b|\bjars?\b/,
    wine: /wine|sherry|port|marsala|madeira|vermouth|champagne|prosecco/,
    beer: /beer|ale|lager|stout|porter/,
    rice: /rice|risotto/,
    pasta:
      /pasta|spaghetti|penne|macaroni|fusilli|rigatoni|linguine|tagliatelle|lasagne|lasagna|orzo|fettuccine|farfalle|noodle|vermicelli|ravioli|pappardelle|bucatini|orecchiette|conchiglie|flour/,
    noodle: /noodle|pasta|spaghetti|ramen|udon|soba|vermicelli|flour/,
    nut: /nut|almond|pecan|pistachio|cashew|macadamia/,
    steak: meatWords,
    fish: /fish|cod|haddock|salmon|trout|hake|pollock|mackerel|sea bass|bream|tuna|sole|halibut|turbot|monk|sardine|anchov|herring|plaice|skate|char|snapper|tilapia/,
    juice:
      /juice|lemon|lime|orange|grapefruit|apple|tomato|berr|fruit|pineapple|pomegranate|rhubarb|plum|cherr|passion/,
    coffee: /coffee|espresso/,
    tea: /tea\b/,
    chip: /potato|chip/,
    berry: /berr|currant/,
    thigh: poultry,
    breast: poultry,
    leg: poultry,
    wing: poultry,
    drumstick: poultry,
    sausage: /sausage|chipolata|chorizo|merguez|salsiccia/,
    bean: /bean/,
    pea: /peas?\b/,
    fruit:
      /apple|pear|plum|peach|apricot|berr|cherr|fig|date|raisin|sultana|currant|orange|lemon|lime|mango|pineapple|rhubarb|banana|melon|grape|quince|fruit|prune|cranberr|nectarine|kiwi/,
  }),
);
// Kinds so wide that nearly any list has one, and words that are parts of any food.
const wide: readonly string[] = "vegetable veg herb spice seasoning kernel seed meat fat".split(" ");
const everywhere: ReadonlySet<string> = new Set([...mixtures, ...wide]);
const makesStock: ReadonlySet<string> = new Set(["make-stock", "poach"]);
const makesSyrup: ReadonlySet<string> = new Set(
  "dissolve boil bring-to-boil bring-to-simmer simmer heat cook-sugar caramel reduce soak melt poach infuse".split(
    " ",
  ),
);
const makesBroth: ReadonlySet<string> = new Set(["boil", "stew", "bring-to-boil", "simmer"]);

/** What the card itself makes, as stemmed words: whatever its foods are, and by the names that it gives. */
export type MadeHere = {
  /** True for mixtures, and for kinds of food that stand for another line. */
  readonly isKind: (word: string) => boolean;
  /** Its title's main word, its parts, its products. They may bear the name of a raw food that went in. */
  readonly names: ReadonlySet<string>;
  /** What the title calls the dish, as stemmed words. */
  readonly title: readonly string[];
  /** Stemmed names of fruit of which every line takes the same part alone: its juice, its zest. */
  readonly portions: ReadonlyMap<string, string>;
  /** From where on in the text there is a liquor: whatever was boiled in water gives a broth, what was poached a stock, sugar over heat a syrup. */
  readonly liquors: { readonly stock: number; readonly broth: number; readonly syrup: number };
};

/** What the title calls the dish, without what comes with it: "Mussels" of "Mussels in cider". */
export const titleHead = (dish: Dish): string =>
  (dish.title.split(/\b(?:with|without|and|in|on|for|from|of|at|as)\b|[,(&/:]/i)[0] ?? "")
    .trim()
    .toLowerCase();

const citrus = /\b(lemon|lime|orange|grapefruit)s?\b/i;

const portionsOf = (dish: Dish): ReadonlyMap<string, string> => {
  const found = new Map<string, string>();
  for (const i of dish.ingredients) {
    const fruit = citrus.exec(i.text)?.[1]?.toLowerCase();
    if (fruit === undefined) continue;
    const said = [/juice/i.test(i.text) ? "juice" : "", /zest|rind|peel/i.test(i.text) ? "zest" : ""].join(
      "",
    );
    found.set(fruit, (found.get(fruit) ?? said) === said ? said : "whole");
  }
  return found;
};

/** Finds the words that name what a card makes. */
export const madeHere = (dish: Dish): MadeHere => {
  const list = dish.ingredients.map((i) => `${i.text} ${i.name}`.toLowerCase()).join(" ; ");
  // Few of the kinds are ever asked for on one card, and the list is searched for those alone.
  const known = new Map<string, boolean>();
  const isKind = (word: string): boolean => {
    if (everywhere.has(word)) return true;
    const members = kinds.get(word);
    if (members === undefined) return false;
    const found = known.get(word) ?? members.test(list);
    known.set(word, found);
    return found;
  };
  const actions = dish.steps.flatMap((step) => step.actions);
  const firstOf = (techniques: ReadonlySet<string>): number => {
    const first = actions.find((a) => techniques.has(a.technique ?? ""));
    if (first === undefined) return Number.POSITIVE_INFINITY;
    return first.technique === "make-stock" ? first.span.start : first.span.end;
  };
  const stock = firstOf(makesStock);
  const names = new Set<string>();
  const put = (words: string | null): void => {
    for (const word of (words ?? "").toLowerCase().split(/[^\p{L}]+/u))
      if (word.length > 2) names.add(stem(word));
  };
  const head = titleHead(dish).split(/\s+/);
  put(head.at(-1) ?? null);
  for (const i of dish.ingredients) put(i.part);
  for (const step of dish.steps) {
    put(step.part);
    for (const action of step.actions) put(action.makes);
  }
  return {
    isKind,
    names,
    title: head.map(stem),
    portions: portionsOf(dish),
    liquors: { stock, broth: Math.min(stock, firstOf(makesBroth)), syrup: firstOf(makesSyrup) },
  };
};
