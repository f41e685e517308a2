import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const ratioBrokenExamples: readonly Example[] = [
  {
    card: `Lentils for the pass

Serves 8

500 g green lentils
600 ml chicken stock
1 onion, chopped

Method

1. Simmer the lentils and onion in the stock for 30 minutes.

Notes

It is always two of stock to one of lentils.
`,
    says: ["two of stock to one of lentils"],
    fixed: `Lentils for the pass

Serves 8

500 g green lentils
1 litre chicken stock
1 onion, chopped

Method

1. Simmer the lentils and onion in the stock for 30 minutes.

Notes

It is always two of stock to one of lentils.
`,
  },
];
