import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const yeastDoubtfulExamples: readonly Example[] = [
  {
    card: `Loaf

Makes 1 loaf

500 g strong white flour
70 g dried yeast
320 ml water
10 g salt

Method

1. Knead everything for 10 minutes.
2. Prove for 1 hour.
3. Heat the oven to 220°C and bake for 35 minutes.
`,
    says: ["70 g dried yeast"],
    fixed: `Loaf

Makes 1 loaf

500 g strong white flour
7 g dried yeast
320 ml water
10 g salt

Method

1. Knead everything for 10 minutes.
2. Prove for 1 hour.
3. Heat the oven to 220°C and bake for 35 minutes.
`,
  },
];
