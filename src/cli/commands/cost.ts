import type { Evening } from "#engine/index.ts";
import { moneyText } from "#words/money-text.ts";
import { countText, listText, percentText } from "#words/number-text.ts";
import { heading, titlesOf } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { tableText, wrap } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";

/** Shows what the menu costs and what to charge. */
export const costCommand = sittingCommand({
  name: "cost",
  topics: ["prices"],
  summary: "show what the menu costs, by dish and by cover, and the price that meets the target",
  about: "Costs count food only: packs at their prices. Labour, fuel and hire are not in them.",
  examples: ["tamis cost demo/lantern-supper/sitting.yaml"],
  text: (evening, paint) => costText(evening, paint),
  json: (evening) => ({ cost: evening.cost }),
});

const costText = (evening: Evening, paint: Paint): string => {
  const { cost } = evening;
  const money = (minor: number): string => moneyText(minor, cost.currency);
  const title = titlesOf(evening);
  const dishes = tableText(
    cost.dishes.map((dish) => [
      title(dish.dish),
      countText(dish.portions, "portion", "portions"),
      `${money(dish.perPortion)} each`,
      money(dish.used),
      dish.unpriced.length === 0 ? "" : `without ${countText(dish.unpriced.length, "food", "foods")}`,
    ]),
    ["left", "right", "right", "right", "left"],
    "  ",
  );
  const sums = tableText(
    [
      ["Food used", money(cost.used)],
      ["Left over in packs", money(cost.leftOver)],
      ["Bought", money(cost.bought)],
      ["Per cover", money(cost.perCover)],
      [`Price per cover at ${percentText(cost.foodCostTarget)} food cost, before tax`, money(cost.priceNet)],
      [`Tax at ${percentText(evening.menu.sitting.taxRate)}`, money(cost.tax)],
      ["Price per cover", money(cost.priceGross)],
    ],
    ["left", "right"],
    "  ",
  );
  const unpriced = [...new Set(cost.dishes.flatMap((dish) => dish.unpriced))];
  const gap =
    unpriced.length === 0
      ? ""
      : `\n${wrap(`These leave out what no price list has: ${listText(unpriced)}.`, "")}`;
  return `${heading(evening, paint)}\n${paint.bold("Dishes")}\n${dishes}\n${paint.bold("Menu")}\n${sums}${gap}`;
};
