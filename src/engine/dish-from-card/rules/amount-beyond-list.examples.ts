import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const amountBeyondListExamples: readonly Example[] = [
  {
    card: `Batter

Serves 4

200 ml milk
150 g plain flour
2 eggs

Method

1. Whisk the eggs and flour with 400 ml milk.
2. Fry in a little oil for 2 minutes a side.
`,
    says: ["400 ml"],
    fixed: `Batter

Serves 4

200 ml milk
150 g plain flour
2 eggs

Method

1. Whisk the eggs and flour with the milk.
2. Fry in a little oil for 2 minutes a side.
`,
  },
];
