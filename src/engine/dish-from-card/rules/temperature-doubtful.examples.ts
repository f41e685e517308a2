import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const temperatureDoubtfulExamples: readonly Example[] = [
  {
    card: `Water biscuits

Makes 24

250 g plain flour
60 g butter
90 ml water

Method

1. Rub the butter into the flour, add the water and roll out.
2. Bake at 400°C for 12 minutes.
`,
    says: ["Bake at 400°C for 12 minutes"],
    fixed: `Water biscuits

Makes 24

250 g plain flour
60 g butter
90 ml water

Method

1. Rub the butter into the flour, add the water and roll out.
2. Bake at 200°C for 12 minutes.
`,
  },
];
