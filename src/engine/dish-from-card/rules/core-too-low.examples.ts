import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const coreTooLowExamples: readonly Example[] = [
  {
    card: `Chicken breasts

Serves 4

4 chicken breasts
20 ml olive oil

Method

1. Heat the oven to 200°C.
2. Brush the chicken with the oil and roast for 20 minutes, until the middle reads 60°C.
`,
    says: ["roast for 20 minutes, until the middle reads 60°C"],
    fixed: `Chicken breasts

Serves 4

4 chicken breasts
20 ml olive oil

Method

1. Heat the oven to 200°C.
2. Brush the chicken with the oil and roast for 20 minutes, until the middle reads 75°C.
`,
  },
];
