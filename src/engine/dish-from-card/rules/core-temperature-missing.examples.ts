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
  {
    card: `Turkey burgers

Serves 4

600 g turkey mince
1 tbsp olive oil

Method

1. Shape the mince into 4 burgers.
2. Fry in the oil for 4 minutes a side, keeping them a little pink in the middle.
`,
    says: ["Fry in the oil for 4 minutes a side, keeping them a little pink in the middle"],
    fixed: `Turkey burgers

Serves 4

600 g turkey mince
1 tbsp olive oil

Method

1. Shape the mince into 4 burgers.
2. Fry in the oil for 6 minutes a side, until they are no longer pink in the middle.
`,
  },
];
