import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const partUnusedExamples: readonly Example[] = [
  {
    card: `Strawberries and cream

Serves 4

400 g strawberries
400 ml double cream

Method

1. Whip 200 ml cream to soft peaks.
2. Fold in the strawberries and serve.
`,
    says: ["cream"],
    fixed: `Strawberries and cream

Serves 4

400 g strawberries
400 ml double cream

Method

1. Whip the cream to soft peaks.
2. Fold in the strawberries and serve.
`,
  },
];
