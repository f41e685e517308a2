import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const ovenNotPreheatedExamples: readonly Example[] = [
  {
    card: `Cheese straws

Makes 20

250 g plain flour
125 g butter
90 ml water

Method

1. Rub the butter into the flour, add the water and roll out.
2. Bake at 200°C for 12 minutes.
`,
    says: ["Bake at 200°C for 12 minutes"],
    fixed: `Cheese straws

Makes 20

250 g plain flour
125 g butter
90 ml water

Method

1. Heat the oven to 200°C.
2. Rub the butter into the flour, add the water and roll out.
3. Bake at 200°C for 12 minutes.
`,
  },
];
