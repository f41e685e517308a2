import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const rawSproutsExamples: readonly Example[] = [
  {
    card: `Crisp salad

Serves 4

200 g beansprouts
1 cucumber, sliced
30 ml sesame oil

Method

1. Toss the beansprouts and the cucumber with the oil.
`,
    says: ["200 g beansprouts"],
    fixed: `Crisp salad

Serves 4

200 g beansprouts
1 cucumber, sliced
30 ml sesame oil

Method

1. Steam the beansprouts for 3 minutes and cool them.
2. Toss the beansprouts and the cucumber with the oil.
`,
  },
];
