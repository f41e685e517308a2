import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const rawMilkUsedExamples: readonly Example[] = [
  {
    card: `Rice pudding

Serves 4

1 litre raw milk
120 g pudding rice

Method

1. Simmer the rice in the milk for 40 minutes.
`,
    says: ["raw"],
    fixed: `Rice pudding

Serves 4

1 litre pasteurised milk
120 g pudding rice

Method

1. Simmer the rice in the milk for 40 minutes.
`,
  },
];
