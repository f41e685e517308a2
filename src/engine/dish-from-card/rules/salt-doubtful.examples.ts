import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const saltDoubtfulExamples: readonly Example[] = [
  {
    card: `Glazed carrots

Serves 4

600 g carrots
40 g butter
100 g salt

Method

1. Simmer the carrots with the butter and salt for 15 minutes.
`,
    says: ["100 g salt"],
    fixed: `Glazed carrots

Serves 4

600 g carrots
40 g butter
6 g salt

Method

1. Simmer the carrots with the butter and salt for 15 minutes.
`,
  },
];
