import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const stepRepeatedExamples: readonly Example[] = [
  {
    card: `Leeks

Serves 4

400 g leeks, sliced
30 g butter

Method

1. Sweat the leeks in the butter for 10 minutes.
2. Sweat the leeks in the butter for 10 minutes.
`,
    says: ["Sweat the leeks in the butter for 10 minutes."],
    fixed: `Leeks

Serves 4

400 g leeks, sliced
30 g butter

Method

1. Sweat the leeks in the butter for 10 minutes.
`,
  },
];
