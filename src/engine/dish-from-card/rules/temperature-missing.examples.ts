import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const temperatureMissingExamples: readonly Example[] = [
  {
    card: `Baked apples

Serves 4

4 apples, cored
40 g sugar

Method

1. Fill the apples with the sugar.
2. Bake them for 40 minutes, till soft.
`,
    says: ["Bake them for 40 minutes, till soft"],
    fixed: `Baked apples

Serves 4

4 apples, cored
40 g sugar

Method

1. Fill the apples with the sugar.
2. Bake them at 180°C for 40 minutes, till soft.
`,
  },
];
