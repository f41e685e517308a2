import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const listedNotUsedExamples: readonly Example[] = [
  {
    card: `Carrot salad

Serves 4

400 g carrots, grated
40 g raisins
2 tbsp olive oil
1 lemon

Method

1. Squeeze the lemon over the carrots.
2. Add the olive oil, toss and chill for 30 minutes.
`,
    says: ["40 g raisins"],
    fixed: `Carrot salad

Serves 4

400 g carrots, grated
40 g raisins
2 tbsp olive oil
1 lemon

Method

1. Squeeze the lemon over the carrots.
2. Add the raisins and the olive oil, toss and chill for 30 minutes.
`,
  },
];
