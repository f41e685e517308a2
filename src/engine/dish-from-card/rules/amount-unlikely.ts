import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { gramsOf } from "./whole-weights.ts";

/** A line this heavy, grams, that outweighs all others by this much was meant in another unit. Common practice, no source. */
const heavy = 5000;
const outweighs = 12;
/** Grams of meat, fish or vegetables that nobody weighs out. Common practice, no source. */
const leastWeighed = 5;
/** Millilitres of milk, stock, cream or wine that nobody measures. Common practice, no source. */
const leastPoured = 4;
/** Pieces of one food that nobody counts out for so few guests. Common practice, no source. */
const mostPieces = 40;
const mostEach = 12;
const mostSmall = 50;
/** Butter, sugar and the like by the piece: a unit was left out. Common practice, no source. */
const barePieces = 10;

const small =
  /olive|caper|almond|nut|berr|grape|cherr|tomato|pea\b|bean|leaf|leaves|sprig|peppercorn|clove|seed|raisin|sultana|chip|sweet|marshmallow|shrimp|prawn|cockle|mussel|clam|sprout|radish|chestnut|pistachio|date|sheet|wrapper|cardamom|juniper|mint|saffron/i;
const loose =
  /butter|sugar|flour|rice|cheese|gruy|cheddar|parmesan|bacon|lardons?|pancetta|spinach|ginger|crumbs|walnut|almond|prawn|shrimp|bean|mushroom|strawberr|raspberr|blueberr|water|milk|cream|oil|stock|honey|syrup|pasta|noodle|lentil|oats|beef|mince|chocolate|yogh?urt|lasagne|raisin|sultana/i;

/** Spoons of strong spice a guest, ml. Well over what cooks use. Common practice, no source. */
const strong: readonly (readonly [food: RegExp, most: number])[] = [
  [/cayenne|saffron|clove|nutmeg|mace|asafoetida/i, 4],
  [/cinnamon|turmeric|allspice|cardamom|chilli (?:powder|flake)|chili (?:powder|flake)|mustard powder/i, 6],
  [/\bcumin|ground (?:coriander|fennel)|paprika|caraway/i, 10],
  [/black pepper|white pepper|peppercorns?|(?:garlic|onion) (?:powder|granules)/i, 8],
  [/dried (?:thyme|oregano|basil|sage|rosemary|tarragon|marjoram|mixed herbs|mint|dill|parsley)/i, 8],
  [/(?:almond|peppermint|mint|rose|lemon|orange) extract/i, 1.5],
  [/vanilla extract|essence/i, 5],
];

/** Grams of a spice a guest; a curry takes five. Common practice, no source. */
const mostSpice = 15;
const isSaltOrPepper = /salt|pepper|seasoning|msg/i;
const ofSpices = /spice mix|rub\b|seasoning|paste|masala|curry powder|dukkah|za.?atar|brine|pickl|cure/i;

/** Condiments a guest, grams: more is the dish itself. Common practice, no source. */
const condiments: readonly (readonly [food: RegExp, most: number])[] = [
  [/\bmustard\b(?! (?:greens|leaves|cress))/i, 50],
  [
    /\b(?:soy sauce|soya sauce|tamari|fish sauce|worcester(?:shire)?(?: sauce)?|oyster sauce|anchovy (?:paste|essence))\b/i,
    70,
  ],
  [/\b(?:tabasco|hot sauce|chilli sauce|harissa|wasabi|horseradish|sriracha)\b/i, 60],
  [/\b(?:tomato (?:pur[eé]e|paste)|miso(?: paste)?|curry paste|tahini)\b/i, 300],
  [/\bvinegar\b/i, 150],
  [/\b(?:honey|golden syrup|treacle|maple syrup)\b/i, 250],
  [/\b(?:brandy|rum|whisky|vodka|liqueur|kirsch|calvados)\b/i, 120],
];
const ofCondiments =
  /pickl|chutney|relish|sauce|dressing|vinaigrette|marinade|glaze|honey|syrup|brine|cure|jar|preserv|punch|cocktail|cordial|shrub|hummus|mustard|horseradish|harissa|tahini/i;
/** Less of a condiment than this is never too much, grams. Common practice, no source. */
const aLittle = 150;

/** A quarter of a teaspoon, ml. */
const quarterSpoon = 1.25;
/** A tablespoon of sauce, grams. */
const tablespoon = 15;
/** Litres of water to all else, by weight: beyond it millilitres were meant. Common practice, no source. */
const drowned = 25;

/** An amount that no cook means: kilos for grams, grams for kilos, litres for millilitres, pieces by the hundred, spoons mixed up. */
export const amountUnlikely: Rule = {
  code: "amount-unlikely",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const amount = i.amounts[0];
      if (amount === undefined || i.equipment || amount.vague) return [];
      const meant = meantBy(dish, i);
      if (meant === null) return [];
      const words = dish.text.slice(amount.span.start, amount.span.end);
      return [
        makeFinding(
          "amount-unlikely",
          dish.source,
          amount.span,
          { name: i.name, words },
          { fixes: [{ kind: "correct-amount", edits: [replaceWords(amount.span, meant)] }] },
        ),
      ];
    }),
};

/** What was rather meant, as words; null when the amount may well be meant. */
const meantBy = (dish: Dish, i: Ingredient): string | null => {
  const amount = i.amounts[0];
  if (amount === undefined) return null;
  const value = amount.likely;
  const { unit } = amount;
  const food = i.food === null ? null : foodById(i.food);
  const guests = Math.max(1, dish.portions?.likely ?? 4);
  const others = (): number => dish.ingredients.reduce((sum, o) => (o === i ? sum : sum + gramsOf(o)), 0);
  const isWater = /water|ice/i.test(i.name);
  if (
    (unit === "kg" || unit === "l") &&
    gramsOf(i) >= heavy &&
    others() > 0 &&
    gramsOf(i) > outweighs * others() &&
    !isWater &&
    !/\boil|fat/i.test(i.name)
  )
    return `${value} ${unit === "kg" ? "g" : "ml"}`;
  if (unit === "l" && isWater && gramsOf(i) >= heavy && others() > 0 && gramsOf(i) > drowned * others())
    return `${value} ml`;
  const main = food !== null && /^(?:meat|poultry|fish|vegetables|fruit)$/.test(food.shelf);
  const strongFood =
    /garlic|ginger|chilli|horseradish|truffle|shallot|zest|rind|dried|mushroom|caviar|roe|anchov|seaweed|nori|lemon|lime/i;
  const bulk = main || /flour|sugar|rice|fat\b/.test(food?.name ?? "");
  if (
    unit === "g" &&
    i.amounts.length === 1 &&
    value < leastWeighed &&
    bulk &&
    !strongFood.test(i.name) &&
    others() > 100
  )
    return `${value} kg`;
  const drink = food !== null && /milk|stock|cream|wine|beer|ale|cider|water|broth/.test(food.name);
  if (unit === "ml" && value < leastPoured && drink && others() > 100) return `${value} litres`;
  if ((unit === "piece" || unit === "clove") && !i.text.includes("%")) {
    if (value > mostPieces && value / guests > mostEach && !small.test(i.name))
      return String(Math.round(value / 100) || 1);
    if (value > 300 && value / guests > mostSmall && small.test(i.name))
      return String(Math.round(value / 100));
    if (unit === "clove" && value > mostPieces && value / guests > mostEach)
      return String(Math.round(value / 100) || 1);
    if (
      unit === "piece" &&
      value >= barePieces &&
      loose.test(i.name) &&
      !/sheets?\b|biscuits?\b|cookies?\b|cakes?\b|buns?\b/i.test(i.name) &&
      isBare(dish, i)
    )
      return `${value} g`;
  }
  if (unit === "tbsp" || unit === "tsp" || unit === "cup") {
    const ml = value * (unit === "tbsp" ? 15 : unit === "tsp" ? 5 : 240);
    const limit = strong.find(([name]) => name.test(i.name))?.[1];
    if (limit !== undefined && dish.portions !== null && ml / guests > limit && !ofSpices.test(dish.title))
      return `${Math.max(1, Math.round((limit * guests) / 2 / quarterSpoon)) / 4} tsp`;
  }
  const mostOfIt = condiments.find(([name]) => name.test(i.name))?.[1];
  if (
    mostOfIt !== undefined &&
    dish.yield !== null &&
    gramsOf(i) > aLittle &&
    gramsOf(i) / guests > mostOfIt &&
    !ofCondiments.test(dish.title)
  )
    return `${Math.max(1, Math.round((mostOfIt * guests) / 2 / tablespoon))} tbsp`;
  if (
    food?.shelf === "spices" &&
    gramsOf(i) / guests > mostSpice &&
    !isSaltOrPepper.test(i.name) &&
    !ofSpices.test(dish.title)
  )
    return unit === "kg"
      ? `${value} g`
      : unit === "tsp" || unit === "g"
        ? `${value / 10} ${unit}`
        : `${value} tsp`;
  return null;
};

/** A figure and at once the food: "250 butter". */
const isBare = (dish: Dish, i: Ingredient): boolean => {
  const amount = i.amounts[0];
  if (amount === undefined || i.size !== null || i.container !== null) return false;
  const words = dish.text.slice(amount.span.start, amount.span.end);
  return /^[\d.,]+$/.test(words.trim());
};
