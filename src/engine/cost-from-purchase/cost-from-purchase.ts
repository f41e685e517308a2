import type { Finding } from "../findings/finding.ts";
import { minor } from "../measure/units.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Cost, Purchase } from "../model/purchase.ts";

/** What the menu costs, by dish and by cover, and the price that meets the food-cost target. */
export const costFromPurchase = (menu: Menu, _purchase: Purchase): Outcome<Cost, Finding> => ({
  value: {
    currency: menu.sitting.currency,
    dishes: [],
    used: minor(0),
    bought: minor(0),
    leftOver: minor(0),
    perCover: minor(0),
    foodCostTarget: menu.sitting.foodCostTarget,
    priceNet: minor(0),
    tax: minor(0),
    priceGross: minor(0),
  },
  findings: [],
});
