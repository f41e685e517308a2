import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const listedTwiceExamples: readonly Example[] = [
  {
    card: `Onion soup

Serves 4

600 g onions, sliced
30 g butter
600 g onions, sliced

Method

1. Sweat the onions in the butter for 30 minutes.
`,
    says: ["600 g onions, sliced"],
    fixed: `Onion soup

Serves 4

600 g onions, sliced
30 g butter

Method

1. Sweat the onions in the butter for 30 minutes.
`,
  },
];
