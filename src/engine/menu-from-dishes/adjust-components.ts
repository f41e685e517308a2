import type { Finding } from "../findings/finding.ts";
import type { Component, Measured } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";
import type { SourceId } from "../model/span.ts";
import { type Adjustments, adjustAmounts } from "./adjust-amounts.ts";
import { adjustedFindings } from "./adjusted-lines.ts";
import { scaleAmounts } from "./measure-ingredient.ts";

type Made = Pick<Component, "dish" | "factor" | "ingredients">;

/**
 * What does not go in step in the cards that dishes use: a card is made once for all of them, so its foods are adjusted
 * by the whole of it, and alike wherever they stand, in the component and in every dish that takes of it.
 */
export const componentAdjuster = (
  components: readonly Made[],
  kitchen: Kitchen,
): {
  /** Foods of a dish or of another component; `owner` is null for a dish, whose own lines are adjusted already. */
  readonly adjust: (foods: readonly Measured[], owner: SourceId | null) => readonly Measured[];
  readonly findings: readonly Finding[];
} => {
  const bySource = new Map<SourceId, Adjustments>(
    components.map(({ dish, factor }) => [dish.source, adjustAmounts(dish, factor, kitchen)]),
  );
  const adjust = (foods: readonly Measured[], owner: SourceId | null): readonly Measured[] =>
    foods.map((food) => {
      const card = food.card ?? owner;
      const place = food.card === null ? food.ingredient : food.cardIngredient;
      const adjustment = card === null || place === null ? undefined : bySource.get(card)?.get(place);
      if (adjustment === undefined) return food;
      return {
        ...food,
        ...scaleAmounts(food, adjustment.factor),
        adjusted: [...food.adjusted, adjustment],
      };
    });
  const findings = components.flatMap(({ dish, factor }) =>
    adjustedFindings(dish, factor, bySource.get(dish.source) ?? new Map()),
  );
  return { adjust, findings };
};
