import { type FoodPart, partsOf } from "../larder/food-parts.ts";
import type { FoodId } from "../model/food.ts";
import type { Measured, Menu } from "../model/menu.ts";
import type { Span } from "../model/span.ts";
import { foodKey } from "./read-packs.ts";

/** One ingredient of one version, and under which food it is bought. */
export type Want = {
  readonly dish: string;
  readonly version: string;
  readonly measured: Measured;
  /** Where it stands on the card. */
  readonly span: Span;
  /** The food it is bought as; null when the words were not understood. */
  readonly food: FoodId | null;
  /** Parts of that food that it takes; empty when it takes the food itself. */
  readonly parts: readonly FoodPart[];
  /** True when the part is sold as such, so that its own weight is bought and not that of the wholes. */
  readonly asSuch: boolean;
};

/**
 * All ingredients of the menu by the food they are bought as. A part of a food is bought as such when a price list has
 * it (a carton of egg whites), and otherwise as the whole (eggs). Components are left out: their foods stand in the
 * dishes that use them.
 */
export const gatherWants = (
  menu: Menu,
  isListed: (key: string) => boolean,
): ReadonlyMap<string, readonly Want[]> => {
  const wants = new Map<string, Want[]>();
  for (const { dish, versions } of menu.dishes)
    for (const version of versions)
      for (const measured of version.ingredients) {
        const all = measured.food === null ? [] : partsOf(measured.food, measured.portion);
        const [first] = all;
        const asSuch = first !== undefined && all.length === 1 && isListed(first.food);
        const parts = asSuch ? [] : all;
        const food = first === undefined ? measured.food : asSuch ? first.food : first.whole;
        const key = foodKey(food, measured.name);
        const span = dish.ingredients.find((i) => i.index === measured.ingredient)?.span ?? dish.titleSpan;
        const want = { dish: dish.source, version: version.id, measured, span, food, parts, asSuch };
        const before = wants.get(key);
        if (before === undefined) wants.set(key, [want]);
        else before.push(want);
      }
  return wants;
};
