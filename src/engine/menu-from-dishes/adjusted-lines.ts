import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Dish } from "../model/dish.ts";
import type { Adjustment } from "../model/menu.ts";
import type { Adjustments } from "./adjust-amounts.ts";
import type { Line } from "./dish-lines.ts";
import { scaleAmounts } from "./measure-ingredient.ts";

const adjustLine = (line: Line, adjustment: Adjustment | undefined): Line => {
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

/**
 * Lines with their adjustments multiplied in: their foods, and how much they take of another card. What a swap brings in
 * for one line each is adjusted as the line that goes; what comes for several together is not.
 */
export const adjustLines = (
  dish: Dish,
  swaps: readonly number[],
  lines: readonly Line[],
  adjustments: Adjustments,
): readonly Line[] => {
  const comes = swaps
    .flatMap((s) => dish.swaps[s] ?? [])
    .flatMap((swap) =>
      swap.comes.map((_, place) => (swap.comes.length === swap.out.length ? swap.out[place] : undefined)),
    );
  let came = 0;
  return lines.map((line) => {
    const place = line.ingredient ?? comes[came];
    if (line.ingredient === null) came += 1;
    return adjustLine(line, place === undefined ? undefined : adjustments.get(place));
  });
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
