import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const raisingAgentDoubtfulExamples: readonly Example[] = [
  {
    card: `Scones

Makes 8

250 g plain flour
40 g baking powder
150 ml milk
60 g butter

Method

1. Rub the butter into the flour and baking powder.
2. Stir in the milk.
3. Heat the oven to 220°C and bake for 12 minutes.
`,
    says: ["40 g baking powder"],
    fixed: `Scones

Makes 8

250 g plain flour
10 g baking powder
150 ml milk
60 g butter

Method

1. Rub the butter into the flour and baking powder.
2. Stir in the milk.
3. Heat the oven to 220°C and bake for 12 minutes.
`,
  },
];
