import type { Dish } from "../../model/dish.ts";
import { type Placed, placedActions } from "./dish-graph.ts";
import { orderCases } from "./order-cases.ts";

/** Something that is done too early, and what must come before it. */
export type OutOfOrder = { readonly late: Placed; readonly early: Placed };

/** Everything that is done before what it needs, one a kind: told by the order of the steps alone. */
export const outOfOrder = (dish: Dish): readonly OutOfOrder[] => {
  const all = placedActions(dish);
  return orderCases.flatMap(({ where, late, early, enough, once, sameStep }) => {
    if (where !== undefined && !where.test(dish.text)) return [];
    const at = all.findIndex((p) => p.step.phase === "method" && late(p, dish));
    const found = all[at];
    if (once && all.slice(at + 1).some((p) => p.action.technique === found?.action.technique)) return [];
    if (found === undefined || all.slice(0, at).some((p) => enough(p, dish))) return [];
    const must = all
      .slice(at + 1)
      .find((p) => p.step.phase === "method" && (sameStep || p.step !== found.step) && early(p, found, dish));
    return must === undefined ? [] : [{ late: found, early: must }];
  });
};
