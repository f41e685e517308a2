import { foodById } from "../larder/foods.ts";
import { leftBehind } from "../larder/left-behind.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { loadsOf } from "./vessel-loads.ts";

/** Part of its weight that fried food takes up of the fat. Common practice, no source. */
const takenUp = 0.1;
/** A pan to deep-fry in is filled no further, so that it does not boil over. Common practice, no source. */
export const fillOfFat = 0.5;
/** One part of food to so many parts of fat by weight at once, or the fat cools. Common practice, no source. */
const fatToFood = 6;

/** Fat to deep-fry in, and what is fried in it, at the card's size. */
export type Frying = {
  /** The line of the fat. */
  readonly line: number;
  readonly actions: ReadonlySet<string>;
  readonly fatGrams: number;
  readonly fatLitres: number;
  readonly foodGrams: number;
  /** As the card has it; null when it does not say. */
  readonly batches: number | null;
};

/** True for what is done in deep fat. */
export const isDeepFry = (action: Action): boolean =>
  action.technique === "deep-fry" || action.station === "fryer";

/** The deep-frying of a card; null when it does none, or lists no fat for it. */
export const fryingOf = (dish: Dish): Frying | null => {
  const actions = dish.steps.flatMap((step) => step.actions.filter(isDeepFry));
  const line = dish.ingredients.find(({ index, food }) => {
    const row = food === null ? null : foodById(food);
    return row?.shelf === "oils" && leftBehind(dish, index) === "unknown";
  });
  const fatGrams = line?.grams?.likely ?? 0;
  if (line === undefined || !(fatGrams > 0) || actions.length === 0) return null;
  const loads = loadsOf(dish);
  const inFat = Math.max(0, ...actions.map((a) => (loads.get(a.id)?.grams ?? 0) - fatGrams));
  // Words that name no food ("fry spoonfuls") fry what the card is about.
  const all = dish.ingredients.reduce((sum, i) => sum + (i.equipment ? 0 : (i.grams?.likely ?? 0)), 0);
  const density = (line.food === null ? null : foodById(line.food)?.density) ?? 0.92;
  const stated = actions.reduce((most, a) => Math.max(most, a.batches ?? 0), 0);
  return {
    line: line.index,
    actions: new Set(actions.map((a) => a.id)),
    fatGrams,
    fatLitres: fatGrams / density / 1000,
    foodGrams: inFat > 1 ? inFat : Math.max(0, all - fatGrams),
    batches: stated > 0 ? stated : null,
  };
};

/** Times the card's fat that is hot at once: one panful, in the largest pan, or one in each fryer. Never less than the card's. */
const panfuls = ({ fatLitres }: Frying, factor: number, kitchen: Kitchen): number => {
  const largest = kitchen.pans.reduce((most, pan) => Math.max(most, pan.litres), 0);
  const room = Math.max(1, kitchen.fryers, (largest * fillOfFat) / fatLitres);
  return Math.min(Math.max(1, factor), room);
};

/**
 * What the fat is multiplied by beside the factor: what is hot at once, and what the food takes up beyond it; for less
 * than the card has still one panful. Never more than in step.
 */
export const fatTimes = (frying: Frying, factor: number, kitchen: Kitchen): number => {
  if (factor <= 1) return 1 / factor;
  const hot = panfuls(frying, factor, kitchen);
  const share = Math.min(1, (takenUp * frying.foodGrams) / frying.fatGrams);
  return (hot + share * (factor - hot)) / factor;
};

/** Litres of fat that are hot at once. */
export const fatAtOnce = (frying: Frying, factor: number, kitchen: Kitchen): number =>
  frying.fatLitres * panfuls(frying, factor, kitchen);

/** How often the fat is filled with food: as often as the card does for what it has, or as the fat stays hot. */
export const fryingBatches = (frying: Frying, factor: number, kitchen: Kitchen): number => {
  const onCard = frying.batches ?? (frying.foodGrams * fatToFood) / frying.fatGrams;
  return Math.max(1, Math.ceil((onCard * factor) / panfuls(frying, factor, kitchen) - 1e-9));
};
