import type { Dish } from "../model/dish.ts";
import type { Component } from "../model/menu.ts";
import type { SourceId } from "../model/span.ts";
import type { LineBook } from "./dish-lines.ts";
import type { VersionLines } from "./make-versions.ts";
import { scaleAmounts } from "./measure-ingredient.ts";

/** A dish of the menu with its versions, as components are counted from. */
type DishOnMenu = {
  readonly dish: Dish;
  readonly course: number;
  readonly versions: readonly VersionLines[];
};

type Tally = { readonly dish: Dish; course: number; factor: number; usedBy: Component["usedBy"][number][] };

/** Cards in the order that each comes after all the cards that use it. */
const usersFirst = (roots: readonly Dish[], book: LineBook): readonly Dish[] => {
  const done: Dish[] = [];
  const seen = new Set<SourceId>();
  const visit = (dish: Dish): void => {
    if (seen.has(dish.source)) return;
    seen.add(dish.source);
    for (const line of book.linesOf(dish)) if (line.use !== null) visit(line.use.made);
    done.push(dish);
  };
  roots.forEach(visit);
  return done.reverse();
};

/** The cards that the dishes use, once each, with the amounts of all uses together; makers before users. */
export const findComponents = (
  menu: readonly DishOnMenu[],
  book: LineBook,
): readonly Omit<Component, "batches" | "vessels">[] => {
  const tallies = new Map<SourceId, Tally>();
  const add = (made: Dish, course: number, by: Component["usedBy"][number]): void => {
    const tally = tallies.get(made.source) ?? { dish: made, course, factor: 0, usedBy: [] };
    tally.course = Math.min(tally.course, course);
    tally.factor += by.factor;
    tally.usedBy.push(by);
    tallies.set(made.source, tally);
  };
  for (const { dish, course, versions } of menu)
    for (const { version, lines } of versions)
      for (const { use, ingredient } of lines)
        if (use !== null) {
          const factor = use.factor * version.factor;
          add(use.made, course, { dish: dish.source, version: version.id, ingredient, factor });
        }
  const order = usersFirst(
    [...tallies.values()].map((t) => t.dish),
    book,
  );
  for (const dish of order) {
    const tally = tallies.get(dish.source);
    if (tally === undefined) continue;
    for (const { use, ingredient } of book.linesOf(dish))
      if (use !== null) {
        const factor = use.factor * tally.factor;
        add(use.made, tally.course, { dish: dish.source, version: null, ingredient, factor });
      }
  }
  return [...order].reverse().flatMap((dish) => {
    const tally = tallies.get(dish.source);
    if (tally === undefined) return [];
    const ingredients = book
      .linesOf(dish)
      .flatMap((line) => line.foods.map((food) => ({ ...food, ...scaleAmounts(food, tally.factor) })));
    return [{ ...tally, ingredients }];
  });
};
