import { foodById } from "../larder/foods.ts";
import { isLiquid } from "../larder/liquids.ts";
import { roundForScales } from "../measure/rounding.ts";
import type { Dish, Ingredient } from "../model/dish.ts";
import type { Measured } from "../model/menu.ts";
import type { SheetAmount, SheetBase, SheetLine, SheetPieces } from "../model/sheet.ts";

/** Measures that are poured; the card's own way of measuring is kept. Spoons and cups are weighed at any size. */
const poured: ReadonlySet<string> = new Set([
  "ml",
  "l",
  "cl",
  "dl",
  "pint",
  "fl oz",
  "quart",
  "gallon",
  "gill",
]);

/** One ingredient as a cook weighs it: in the basis of the card, trimmed or not, rounded as scales and jugs show it. */
export const lineOf = (measured: Measured, dish: Dish): SheetLine => {
  const line = dish.ingredients.find((i) => i.index === measured.ingredient) ?? null;
  return {
    ingredient: measured.ingredient,
    part: line?.part ?? null,
    name: measured.name,
    portion: named(measured) ? null : measured.portion,
    preparation: line === null ? [] : [...line.state, ...line.preparation],
    optional: measured.optional,
    cardText: line?.text ?? null,
    amount: amountOf(measured, line),
    pieces: piecesOf(measured),
    adjusted: measured.adjusted,
    base: baseOf(measured.food),
  };
};

const named = ({ portion, name }: Measured): boolean =>
  portion !== null && name.toLowerCase().includes(portion.toLowerCase());

/** Thickeners and setting agents are shares of what is left of the liquid and of what they set; seasoning is tasted. */
const baseOf = (id: string | null): SheetBase | null => {
  const food = id === null ? null : foodById(id);
  if (food === null) return null;
  if (/gelatine|agar|pectin/.test(food.id)) return "what-it-sets";
  if (/cornflour|arrowroot|potato-starch|tapioca-starch|cornstarch/.test(food.id)) return "liquid-left";
  return food.shelf === "spices" || /(^|-)salt(-|$)/.test(food.id) ? "taste" : null;
};

const weights: ReadonlySet<string> = new Set(["g", "kg", "mg", "oz", "lb"]);
/** A liquid that the card tells by the bottle or the spoon is poured from so many grams on. Common practice, no source. */
const leastPoured = 100;

const amountOf = (measured: Measured, line: Ingredient | null): SheetAmount | null => {
  // A part of a food (yolks, juice) is weighed as it goes in, not as the wholes that give it.
  const whole = measured.portion === null && line?.weightBasis === "as-purchased";
  const weight = (whole ? measured.asPurchased : measured.edible)?.likely ?? null;
  if (weight === null || weight <= 0) return null;
  const food = measured.food === null ? null : foodById(measured.food);
  const density = food?.density ?? null;
  const told = line?.amounts.flatMap(({ unit: own }) => own ?? []) ?? [];
  const aJug = food !== null && isLiquid(food) && weight >= leastPoured && !told.some((u) => weights.has(u));
  const pours = told.some((u) => poured.has(u)) || aJug;
  const unit = pours && density !== null && density > 0 ? "ml" : "g";
  const exact = unit === "ml" && density !== null ? weight / density : weight;
  return { unit, value: roundForScales(exact), exact };
};

/** Nobody counts more than so many pieces that weigh less than a gram: peppercorns, bay leaves. Common practice, no source. */
const mostCounted = 20;

const piecesOf = ({ pieces, pieceName, edible }: Measured): SheetPieces | null => {
  if (pieces === null || pieces.likely <= 0) return null;
  const exact = pieces.likely;
  if (exact > mostCounted && edible !== null && edible.likely / exact < 1) return null;
  // Halves help the eye; the weight beside them is what counts. From twenty on nobody counts halves.
  const value = exact >= 20 ? Math.round(exact) : Math.max(0.5, Math.round(exact * 2) / 2);
  return { value, exact, name: pieceName };
};
