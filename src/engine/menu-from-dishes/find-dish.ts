import { nearNames } from "../larder/near-names.ts";
import { normaliseName } from "../larder/normalise-name.ts";
import { singularsOf } from "../larder/plural.ts";
import type { Dish } from "../model/dish.ts";
import type { SourceId } from "../model/span.ts";

/** The dishes given, found by card id or by title. */
export type DishFinder = {
  /** By the id of its card, exactly. */
  readonly byId: (id: SourceId) => Dish | null;
  /** By its title, in any case and number. */
  readonly byTitle: (words: string) => Dish | null;
  /** The id that looks most like the words; empty when none does. */
  readonly near: (words: string) => SourceId;
};

const spaced = (id: SourceId): string => normaliseName(id.replaceAll("-", " "));

/** Of two cards with one id or one title the first is taken. */
export const dishFinder = (dishes: readonly Dish[]): DishFinder => {
  const ids = new Map<SourceId, Dish>();
  const titles = new Map<string, Dish>();
  const names = new Map<string, SourceId>();
  for (const dish of dishes) {
    if (!ids.has(dish.source)) ids.set(dish.source, dish);
    for (const name of [normaliseName(dish.title), spaced(dish.source)]) {
      if (name !== "" && !titles.has(name)) titles.set(name, dish);
      if (name !== "" && !names.has(name)) names.set(name, dish.source);
    }
  }
  const search = nearNames(names);
  return {
    byId: (id) => ids.get(id) ?? null,
    byTitle: (words) => {
      const name = normaliseName(words);
      for (const form of [name, ...singularsOf(name)]) {
        const dish = titles.get(form);
        if (dish !== undefined) return dish;
      }
      return null;
    },
    near: (words) => search(words.replaceAll("-", " "), 1)[0] ?? "",
  };
};
