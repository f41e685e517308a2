import { foodById } from "../../src/engine/larder/foods.ts";
import type { Check } from "./check.ts";

const kept = (id: string, share: number, source: string): Check => ({
  what: `edible portion of ${id}, as a share of what is bought`,
  source,
  run: () => [foodById(id)?.trim, share, 0.006],
});

const armedForces = (id: string, factor: number): Check =>
  kept(id, 1 / factor, `Armed Forces Recipe Service, edible portion to as purchased: factor ${factor}`);

const refuse = (id: string, percent: number, ndb: string): Check =>
  kept(id, 1 - percent / 100, `USDA SR28 (2015), refuse ${percent} % of food ${ndb}`);

/** What is left of vegetables, fruit, eggs and birds when they are prepared the usual way. */
export const checks: readonly Check[] = [
  armedForces("onion", 1.11),
  armedForces("carrot", 1.22),
  armedForces("celery", 1.37),
  armedForces("green-bean", 1.14),
  armedForces("asparagus", 1.89),
  armedForces("broccoli", 1.64),
  armedForces("spring-onion", 1.2),
  armedForces("parsnip", 1.18),
  armedForces("kale", 1.41),
  armedForces("cucumber", 1.05),
  armedForces("aubergine", 1.03),
  refuse("potato", 25, "11352"),
  refuse("leek", 56, "11246"),
  refuse("cauliflower", 61, "11135"),
  refuse("sweet-potato", 28, "11507"),
  refuse("avocado", 26, "09037"),
  refuse("banana", 36, "09040"),
  refuse("pineapple", 49, "09266"),
  refuse("lemon", 47, "09150"),
  refuse("egg", 12, "01123"),
  refuse("chicken", 32, "05006"),
  {
    what: "shelled almonds and walnuts: the refuse of SR28 is shell, and nothing of it applies",
    source: "USDA SR28 (2015), foods 12061 and 12155",
    run: () => [["almond", "walnut"].map((id) => foodById(id)?.trim), [1, 1]],
  },
];
