import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const cueOnlyTimeExamples: readonly Example[] = [
  {
    card: `Soft onions

Serves 6

1 kg onions, sliced
40 g butter

Method

1. Melt the butter and sweat the onions until they are soft and sweet.
`,
    says: ["sweat the onions until they are soft and sweet"],
    fixed: `Soft onions

Serves 6

1 kg onions, sliced
40 g butter

Method

1. Melt the butter and sweat the onions for 25 minutes, until they are soft and sweet.
`,
  },
];
