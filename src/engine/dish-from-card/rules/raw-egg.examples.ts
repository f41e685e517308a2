import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const rawEggExamples: readonly Example[] = [
  {
    card: `Quick mousse

Serves 6

200 g dark chocolate
4 eggs

Method

1. Melt the chocolate for 5 minutes.
2. Separate the eggs, stir the yolks into the chocolate, whisk the whites and fold them in.
3. Chill for 3 hours.
`,
    says: ["4 eggs"],
    fixed: `Quick mousse

Serves 6

200 g dark chocolate
300 ml double cream

Method

1. Melt the chocolate for 5 minutes.
2. Whip the cream and fold it in.
3. Chill for 3 hours.
`,
  },
  {
    card: `Garlic dressing

Serves 8

2 egg yolks
300 ml sunflower oil
1 clove of garlic, crushed

Method

1. Whisk the yolks and the garlic, then pour in the oil a little at a time.
`,
    says: ["2 egg yolks"],
    fixed: `Garlic dressing

Serves 8

150 g mayonnaise
1 clove of garlic, crushed

Method

1. Stir the garlic into the mayonnaise.
`,
  },
];
