import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const intervalUnlikelyExamples: readonly Example[] = [
  {
    card: `Roast carrots

Serves 4

600 g carrots
30 ml olive oil

Method

1. Heat the oven to 200°C.
2. Toss the carrots with the oil.
3. Roast for 35 minutes, turning every 2 hours.
`,
    says: ["Roast for 35 minutes, turning every 2 hours"],
    fixed: `Roast carrots

Serves 4

600 g carrots
30 ml olive oil

Method

1. Heat the oven to 200°C.
2. Toss the carrots with the oil.
3. Roast for 35 minutes, turning every 10 minutes.
`,
  },
];
