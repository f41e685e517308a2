import { type Contents, contentsOf } from "../larder/contents.ts";
import { unlistedWater } from "../larder/unlisted-water.ts";
import { grams } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Version } from "../model/menu.ts";
import type { SheetWater } from "../model/sheet.ts";

/** Grams of salt to a litre of water that is salted to cook in: 7 to 10. Common practice, no source. */
const saltOfWater = 10;

/** Water of each step that no line lists, by the place of the step: by what it covers at this size, and its salt by the water. */
export const waterOf = (dish: Dish, version: Version): ReadonlyMap<number, SheetWater> => {
  // Where a line lists water, it is that.
  if (dish.ingredients.some(({ food }) => food === "water")) return new Map();
  const made = new Map<string, Contents>();
  const found = new Map<number, SheetWater>();
  const weighed = new Map<number, number>();
  for (const { ingredient, edible } of version.ingredients)
    if (ingredient !== null) weighed.set(ingredient, (weighed.get(ingredient) ?? 0) + (edible?.likely ?? 0));
  for (const step of dish.steps)
    for (const action of step.actions) {
      const contents = contentsOf(action, (id) => made.get(id));
      made.set(action.id, contents);
      const foods = [...contents.values()].map(({ ingredient, share }) => ({
        food: dish.ingredients[ingredient]?.food ?? null,
        grams: (weighed.get(ingredient) ?? 0) * share,
      }));
      const litres = unlistedWater(action, step, foods);
      if (litres <= (found.get(step.index)?.litres ?? 0)) continue;
      const salted = /\bsalted\b/i.test(step.text);
      found.set(step.index, { litres, saltGrams: salted ? grams(litres * saltOfWater) : null });
    }
  return found;
};
