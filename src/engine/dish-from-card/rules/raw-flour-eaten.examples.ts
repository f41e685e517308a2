import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const rawFlourEatenExamples: readonly Example[] = [
  {
    card: `Spoon dough

Serves 4

150 g plain flour
100 g butter
100 g light brown sugar

Method

1. Beat the butter and sugar for 5 minutes.
2. Stir in the flour and serve in small bowls.
`,
    says: ["150 g plain flour"],
    fixed: `Spoon dough

Serves 4

150 g heat-treated plain flour
100 g butter
100 g light brown sugar

Method

1. Beat the butter and sugar for 5 minutes.
2. Stir in the flour and serve in small bowls.
`,
  },
];
