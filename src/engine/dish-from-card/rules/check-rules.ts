import type { Finding } from "../../findings/finding.ts";
import type { Dish } from "../../model/dish.ts";
import { rules } from "./list.ts";

/** Everything that the rules have to say about a dish. Never throws. */
export const checkRules = (dish: Dish): readonly Finding[] => rules.flatMap((rule) => rule.check(dish));
