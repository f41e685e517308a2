import type { Dish } from "../../model/dish.ts";
import { stem } from "../steps/stem.ts";

// Words that are as often the dish in hand as a food of its own.
const mixtures =
  "dough batter sauce filling mixture mix syrup custard pastry dressing marinade icing glaze gravy soup jam caramel meringue cake bread salad stew roux stock broth crust topping base paste cream crumb meat fish vegetable veg fruit herb spice seasoning fat liquid bun roll biscuit cookie pie tart pasta noodle rice cheese nut berry steak burger patty dumpling meatball skin bone leaf juice peel zest rind stuffing spread dip pizza pancake waffle muffin tortilla toast roast casserole curry chip mash pudding jelly ganache frosting mousse sandwich egg yolk white colour color garnish drink coffee tea wine beer seed kernel pulp shell head tail stalk root lot bit bird brine ice".split(
    " ",
  );

/** Stemmed words that name what the card itself makes: mixtures, its parts, its title. */
export const madeHere = (dish: Dish): ReadonlySet<string> => {
  const made = new Set<string>(mixtures);
  const put = (words: string | null): void => {
    for (const word of (words ?? "").toLowerCase().split(/[^\p{L}]+/u))
      if (word.length > 2) made.add(stem(word));
  };
  put(dish.title);
  for (const i of dish.ingredients) put(i.part);
  for (const step of dish.steps) {
    put(step.part);
    for (const action of step.actions) put(action.makes);
  }
  return made;
};
