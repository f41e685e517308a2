import type { Dish, Ingredient } from "../../model/dish.ts";
import { gramsOf, gramsWhere } from "./whole-weights.ts";

/** An agent that works by its share of something else, with the share that is usual and the most that is ever meant. */
export type AgentShare = {
  readonly agent: (i: Ingredient) => boolean;
  readonly base: (i: Ingredient) => boolean;
  readonly usual: number;
  readonly most: number;
};

/** Lines of an agent that make more of it than anyone means, with the share found and the grams that would be usual. */
export const overdosed = (
  dish: Dish,
  { agent, base, usual, most }: AgentShare,
): readonly { readonly line: Ingredient; readonly share: number; readonly grams: number }[] =>
  dish.ingredients.filter(agent).flatMap((line) => {
    const inPart = (i: Ingredient): boolean => i.part === line.part;
    const own = gramsWhere(dish, (i) => base(i) && inPart(i));
    const weight = own > 0 ? own : gramsWhere(dish, base);
    const share = weight > 0 ? gramsOf(line) / weight : 0;
    return share > most ? [{ line, share: Math.round(share * 1000) / 1000, grams: weight * usual }] : [];
  });
