import type { Finding } from "../findings/finding.ts";
import { divideMoney, priceAtTarget, shareOut, taxOn } from "../measure/money.ts";
import { type Count, count, minor } from "../measure/units.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Cost, DishCost, Purchase } from "../model/purchase.ts";

type Tally = { used: number; portions: number; readonly unpriced: Set<string> };

/**
 * What the menu costs, by dish and by cover, and the price that meets the food-cost target. A dish pays for what it
 * uses at the price of the packs it comes from; what is left in the packs stands by itself, so that the dishes and the
 * left-over add up to what is bought, to the penny. The price is set on all that is bought for the occasion; tax is
 * reckoned on one cover. No allowance for bread, butter or seasoning is put in that no card states.
 */
export const costFromPurchase = (menu: Menu, purchase: Purchase): Outcome<Cost, Finding> => {
  const { sitting } = menu;
  const tallies = new Map<string, Tally>();
  for (const { dish, versions } of menu.dishes) {
    const tally = tallies.get(dish.source) ?? { used: 0, portions: 0, unpriced: new Set() };
    tally.portions += versions.reduce((sum, v) => sum + v.portions, 0);
    tallies.set(dish.source, tally);
  }
  let over = 0;
  for (const line of purchase.lines) {
    const priced = line.packs.length > 0 && line.bought > 0;
    if (priced) over += (line.cost * line.leftOver) / line.bought;
    for (const demand of line.demands) {
      const tally = tallies.get(demand.dish);
      if (tally === undefined) continue;
      if (priced) tally.used += (line.cost * demand.grams) / line.bought;
      else if (!line.free) tally.unpriced.add(line.name);
    }
  }
  const parts = shareOut(purchase.total, [...[...tallies.values()].map((t) => t.used), over]);
  const dishes = [...tallies].map(([dish, tally], i): DishCost => {
    const used = parts[i] ?? minor(0);
    const portions: Count = count(tally.portions);
    return { dish, used, perPortion: divideMoney(used, portions), portions, unpriced: [...tally.unpriced] };
  });
  const leftOver = parts[dishes.length] ?? minor(0);
  const covers = Math.max(sitting.covers, sitting.guests.length);
  const priceNet = covers > 0 ? priceAtTarget(purchase.total / covers, sitting.foodCostTarget) : minor(0);
  const tax = taxOn(priceNet, sitting.taxRate);
  return {
    value: {
      currency: sitting.currency,
      dishes,
      used: minor(purchase.total - leftOver),
      bought: purchase.total,
      leftOver,
      perCover: divideMoney(purchase.total, covers),
      foodCostTarget: sitting.foodCostTarget,
      priceNet,
      tax,
      priceGross: minor(priceNet + tax),
    },
    findings: [],
  };
};
