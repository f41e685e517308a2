import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const orderDoubtfulExamples: readonly Example[] = [
  {
    card: `Buttered potatoes

Serves 4

800 g potatoes
50 g butter

Method

1. Drain the potatoes.
2. Boil the potatoes for 20 minutes.
3. Toss with the butter.
`,
    says: ["Drain the potatoes"],
    fixed: `Buttered potatoes

Serves 4

800 g potatoes
50 g butter

Method

1. Boil the potatoes for 20 minutes.
2. Drain the potatoes.
3. Toss with the butter.
`,
  },
];
