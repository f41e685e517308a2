import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const componentNotMadeExamples: readonly Example[] = [
  {
    card: `Plum layer

Serves 6

800 g plums, stoned
60 g sugar
100 g flaked almonds

Method

1. Stew the plums with the sugar for 15 minutes, until soft.
2. Spread the custard over the plums in a wide dish.
3. Scatter with the almonds and chill for 2 hours.
`,
    says: ["the custard"],
    fixed: `Plum layer

Serves 6

800 g plums, stoned
60 g sugar
500 g ready-made custard
100 g flaked almonds

Method

1. Stew the plums with the sugar for 15 minutes, until soft.
2. Spread the custard over the plums in a wide dish.
3. Scatter with the almonds and chill for 2 hours.
`,
  },
];
