import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const poultryWashedExamples: readonly Example[] = [
  {
    card: `Thighs in oil

Serves 4

4 chicken thighs
20 ml olive oil

Method

1. Wash the chicken thighs.
2. Brush with the oil and roast at 200°C for 40 minutes, until the middle reads 75°C.
`,
    says: ["Wash the chicken thighs"],
    fixed: `Thighs in oil

Serves 4

4 chicken thighs
20 ml olive oil

Method

1. Pat the chicken thighs dry.
2. Brush with the oil and roast at 200°C for 40 minutes, until the middle reads 75°C.
`,
  },
];
