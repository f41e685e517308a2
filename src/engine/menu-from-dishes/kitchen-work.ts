import type { Action, Dish } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import type { Adjustments } from "./adjust-amounts.ts";
import { bathOf } from "./bath.ts";
import { potsOf } from "./boiled-away.ts";
import { type Frying, fatAtOnce, fryingOf } from "./frying-fat.ts";
import { coverTimes } from "./steeped.ts";
import { type Loads, loadsOf } from "./vessel-loads.ts";

/** A card at a size in a kitchen: what stands in its vessels. */
export type Work = {
  readonly dish: Dish;
  readonly factor: number;
  readonly kitchen: Kitchen;
  readonly loads: Loads;
  /** The same for the card's own size. */
  readonly onCard: Loads;
  readonly frying: Frying | null;
  /** Litres that an action fills a pan with: fat by what is hot at once, all else by its load. */
  readonly litresIn: (action: Action) => number;
};

/**
 * A card so many times over, with its adjusted amounts. What is cooked in a bath takes the room of both in step, though
 * the bath itself is used again.
 */
export const kitchenWork = (dish: Dish, factor: number, adjustments: Adjustments, kitchen: Kitchen): Work => {
  const bath = bathOf(dish);
  const frying = fryingOf(dish);
  const loads = loadsOf(
    dish,
    (place, action) => {
      const adjustment = adjustments.get(place);
      const again = adjustment?.reason === "bath" && bath?.shared.has(action) === true;
      if (again) return factor * coverTimes(bath.litres, bath.foodKilos, factor);
      return factor * (adjustment?.factor ?? 1);
    },
    potsOf(kitchen),
  );
  const litresIn = (action: Action): number => {
    const load = loads.get(action.id);
    const inside = [...(load?.contents.values() ?? [])];
    const fatOnly = inside.length > 0 && inside.every((c) => c.ingredient === frying?.line);
    return frying !== null && (fatOnly || frying.actions.has(action.id))
      ? fatAtOnce(frying, factor, kitchen)
      : (load?.litres ?? 0);
  };
  return { dish, factor, kitchen, loads, onCard: loadsOf(dish), frying, litresIn };
};
