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
  {
    card: `Quinces in cider, two to one cider to water

Serves 6

6 quinces
400 ml cider
400 ml water
120 g caster sugar

Method

1. Simmer the quinces in the cider, water and sugar for 40 minutes, until tender.
`,
    says: ["two to one cider to water"],
    fixed: `Quinces in cider, two to one cider to water

Serves 6

6 quinces
600 ml cider
300 ml water
120 g caster sugar

Method

1. Simmer the quinces in the cider, water and sugar for 40 minutes, until tender.
`,
  },
];
