import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const meanwhileAloneExamples: readonly Example[] = [
  {
    card: `Buttered leeks

Serves 4

400 g leeks, sliced
30 g butter

Method

1. Meanwhile, sweat the leeks in the butter for 10 minutes.
`,
    says: ["Meanwhile, s"],
    fixed: `Buttered leeks

Serves 4

400 g leeks, sliced
30 g butter

Method

1. Sweat the leeks in the butter for 10 minutes.
`,
  },
];
