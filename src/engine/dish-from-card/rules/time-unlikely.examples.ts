import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const timeUnlikelyExamples: readonly Example[] = [
  {
    card: `Soft onions

Serves 4

400 g onions, sliced
30 g butter

Method

1. Fry the onions in the butter for 10 hours.
`,
    says: ["Fry the onions in the butter for 10 hours"],
    fixed: `Soft onions

Serves 4

400 g onions, sliced
30 g butter

Method

1. Fry the onions in the butter for 10 minutes.
`,
  },
];
