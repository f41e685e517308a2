import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const moreUsedThanListedExamples: readonly Example[] = [
  {
    card: `Crumble topping

Serves 8

200 g plain flour
100 g butter
90 g sugar

Method

1. Rub 75 g of the butter into the flour.
2. Stir in the sugar, melt 50 g of the butter and pour it over.
3. Bake at 180°C for 30 minutes.
`,
    says: ["butter"],
    fixed: `Crumble topping

Serves 8

200 g plain flour
125 g butter
90 g sugar

Method

1. Rub 75 g of the butter into the flour.
2. Stir in the sugar, melt 50 g of the butter and pour it over.
3. Bake at 180°C for 30 minutes.
`,
  },
];
