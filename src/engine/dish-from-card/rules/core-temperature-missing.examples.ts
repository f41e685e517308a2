import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const coreTemperatureMissingExamples: readonly Example[] = [
  {
    card: `Roast thighs

Serves 6

12 chicken thighs
2 tbsp olive oil

Method

1. Rub the thighs with the oil.
2. Roast at 200°C for 35 minutes.
`,
    says: ["Roast at 200°C for 35 minutes"],
    fixed: `Roast thighs

Serves 6

12 chicken thighs
2 tbsp olive oil

Method

1. Rub the thighs with the oil.
2. Roast at 200°C for 35 minutes, until the middle reads 75°C.
`,
  },
];
