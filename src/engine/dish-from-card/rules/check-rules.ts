import type { Finding } from "../../findings/finding.ts";
import { gather } from "../../measure/gather.ts";
import type { Dish } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import { rules } from "./list.ts";

/** Everything that the rules have to say about a dish; figures for safety are those of the region's books. Never throws. */
export const checkRules = (dish: Dish, region: Region): readonly Finding[] =>
  gather(rules, (rule) => rule.check(dish, region));
