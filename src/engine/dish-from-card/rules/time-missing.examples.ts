import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const timeMissingExamples: readonly Example[] = [
  {
    card: `Braised red cabbage

Serves 8

1 kg red cabbage, shredded
200 ml cider
2 tbsp honey

Method

1. Put the cabbage, cider and honey in a pan, cover and simmer.
2. Stir and serve.
`,
    says: ["simmer"],
    fixed: `Braised red cabbage

Serves 8

1 kg red cabbage, shredded
200 ml cider
2 tbsp honey

Method

1. Put the cabbage, cider and honey in a pan, cover and simmer for 50 minutes.
2. Stir and serve.
`,
  },
  {
    card: `Set yoghurt

Serves 4

1 litre whole milk
3 tbsp yoghurt

Method

1. Warm the milk for 5 minutes, stir in the yoghurt and chill.
`,
    says: ["chill"],
    fixed: `Set yoghurt

Serves 4

1 litre whole milk
3 tbsp yoghurt

Method

1. Warm the milk for 5 minutes, stir in the yoghurt and chill overnight.
`,
  },
];
