import type { Finding } from "../../findings/finding.ts";
import type { Dish } from "../../model/dish.ts";

/** Everything that the rules have to say about a dish. Never throws. */
export const checkRules = (_dish: Dish): readonly Finding[] => [];
