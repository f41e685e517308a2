import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const garlicInOilKeptExamples: readonly Example[] = [
  {
    card: `Garlic oil

Makes 400 ml

1 head of garlic, peeled
400 ml olive oil

Method

1. Warm the garlic in the oil for 20 minutes over a low heat.
2. Pour into a jar.

Keeping

Keeps for 3 weeks in the fridge.
`,
    says: ["3 weeks"],
    fixed: `Garlic oil

Makes 400 ml

1 head of garlic, peeled
400 ml olive oil

Method

1. Warm the garlic in the oil for 20 minutes over a low heat.
2. Pour into a jar.

Keeping

Keeps for 4 days in the fridge.
`,
  },
  {
    card: `Garlic confit

Makes 500 ml

20 cloves of garlic, peeled
500 ml olive oil

Method

1. Cook the garlic in the oil at 90°C for 2 hours.
2. Keep in the oil at room temperature for up to a month.
`,
    says: ["a month"],
    fixed: `Garlic confit

Makes 500 ml

20 cloves of garlic, peeled
500 ml olive oil

Method

1. Cook the garlic in the oil at 90°C for 2 hours.
2. Keep in the oil in the fridge for up to 4 days.
`,
  },
];
