import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Dish } from "../model/dish.ts";
import type { Adjustments } from "./adjust-amounts.ts";
import type { Line } from "./dish-lines.ts";
import { scaleAmounts } from "./measure-ingredient.ts";

/** A line with its adjustment multiplied in: its foods, and how much it takes of another card. */
export const adjustLine = (line: Line, adjustments: Adjustments): Line => {
  const adjustment = line.ingredient === null ? undefined : adjustments.get(line.ingredient);
  if (adjustment === undefined) return line;
  const { factor } = adjustment;
  return {
    ...line,
    foods: line.foods.map((food) => ({
      ...food,
      ...scaleAmounts(food, factor),
      adjusted: [...food.adjusted, adjustment],
    })),
    use: line.use === null ? null : { ...line.use, factor: line.use.factor * factor },
  };
};

/** A smaller difference than this is within what any cook pours. Common practice, no source. */
const worthTelling = 0.03;

/** What was adjusted, line by line, with why. */
export const adjustedFindings = (dish: Dish, factor: number, adjustments: Adjustments): readonly Finding[] =>
  [...adjustments].flatMap(([place, { reason, factor: times }]) => {
    const line = dish.ingredients[place];
    if (line === undefined || reason === "whole-pieces" || Math.abs(times - 1) < worthTelling) return [];
    const facts = { title: dish.title, name: line.name, factor, times, reason };
    return [makeFinding("amount-adjusted", dish.source, line.span, facts)];
  });
