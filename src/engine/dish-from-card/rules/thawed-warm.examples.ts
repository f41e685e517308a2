import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const thawedWarmExamples: readonly Example[] = [
  {
    card: `Thighs

Serves 4

4 frozen chicken thighs
20 ml olive oil

Method

1. Defrost the chicken thighs at room temperature.
2. Brush with the oil and roast at 200°C for 40 minutes, until the middle reads 75°C.
`,
    says: ["at room temperature"],
    fixed: `Thighs

Serves 4

4 frozen chicken thighs
20 ml olive oil

Method

1. Defrost the chicken thighs in the fridge overnight.
2. Brush with the oil and roast at 200°C for 40 minutes, until the middle reads 75°C.
`,
  },
];
