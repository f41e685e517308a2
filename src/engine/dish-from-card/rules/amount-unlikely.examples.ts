import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const amountUnlikelyExamples: readonly Example[] = [
  {
    card: `Onion and barley pot

Serves 4

60 g butter
3 onions, sliced
200 kg pearl barley
900 ml vegetable stock

Method

1. Sweat the onions in the butter for 15 minutes.
2. Add the barley and the stock and simmer for 40 minutes.
`,
    says: ["200 kg"],
    fixed: `Onion and barley pot

Serves 4

60 g butter
3 onions, sliced
200 g pearl barley
900 ml vegetable stock

Method

1. Sweat the onions in the butter for 15 minutes.
2. Add the barley and the stock and simmer for 40 minutes.
`,
  },
  {
    card: `Onion and barley pot

Serves 4

60 butter
3 onions, sliced
200 g pearl barley
900 ml vegetable stock

Method

1. Sweat the onions in the butter for 15 minutes.
2. Add the barley and the stock and simmer for 40 minutes.
`,
    says: ["60"],
    fixed: `Onion and barley pot

Serves 4

60 g butter
3 onions, sliced
200 g pearl barley
900 ml vegetable stock

Method

1. Sweat the onions in the butter for 15 minutes.
2. Add the barley and the stock and simmer for 40 minutes.
`,
  },
  {
    card: `Gingered carrots

Serves 4

600 g carrots, in batons
30 g butter
3 tbsp cayenne pepper

Method

1. Melt the butter in a wide pan, add the carrots and the cayenne and cook for 15 minutes, until soft.
`,
    says: ["3 tbsp"],
    fixed: `Gingered carrots

Serves 4

600 g carrots, in batons
30 g butter
1/4 tsp cayenne pepper

Method

1. Melt the butter in a wide pan, add the carrots and the cayenne and cook for 15 minutes, until soft.
`,
  },
];
