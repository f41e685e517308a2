import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const leftOutExamples: readonly Example[] = [
  {
    card: `Rice for tomorrow

Serves 6

400 g basmati rice
20 g butter
600 ml water

Method

1. Bring the rice and the water to the boil, cover and simmer for 12 minutes.
2. Fork in the butter. Cover and leave at room temperature overnight.
`,
    says: ["at room temperature overnight"],
    fixed: `Rice for tomorrow

Serves 6

400 g basmati rice
20 g butter
600 ml water

Method

1. Bring the rice and the water to the boil, cover and simmer for 12 minutes.
2. Fork in the butter. Spread it out, cool it within an hour and put it in the fridge.
`,
  },
];
