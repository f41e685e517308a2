import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const settingsDisagreeExamples: readonly Example[] = [
  {
    card: `Roast beets

Serves 4

1 kg beetroot

Method

1. Heat the oven to 180°C (450°F).
2. Roast the beetroot for 1 hour.
`,
    says: ["450°F"],
    fixed: `Roast beets

Serves 4

1 kg beetroot

Method

1. Heat the oven to 180°C (355°F).
2. Roast the beetroot for 1 hour.
`,
  },
];
