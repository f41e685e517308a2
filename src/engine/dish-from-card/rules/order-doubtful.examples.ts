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
  {
    card: `Beetroot tart

Serves 6

320 g puff pastry
400 g cooked beetroot, sliced
100 g goat's cheese

Method

1. Lay the beetroot and the cheese on the pastry.
2. Cool in the tin for 10 minutes, then turn out.
3. Bake in the oven at 200°C for 30 minutes.
`,
    says: ["Cool in the tin for 10 minutes"],
    fixed: `Beetroot tart

Serves 6

320 g puff pastry
400 g cooked beetroot, sliced
100 g goat's cheese

Method

1. Lay the beetroot and the cheese on the pastry.
2. Bake in the oven at 200°C for 30 minutes.
3. Cool in the tin for 10 minutes, then turn out.
`,
  },
  {
    card: `Elderflower creams

Serves 6

600 ml double cream
100 g caster sugar
100 ml elderflower cordial
3 egg whites

Method

1. Whip the cream with the sugar and the cordial.
2. Fold in the whisked whites and chill for 2 hours.
3. Whisk the egg whites to soft peaks.
`,
    says: ["Fold in the whisked whites"],
    fixed: `Elderflower creams

Serves 6

600 ml double cream
100 g caster sugar
100 ml elderflower cordial
3 egg whites

Method

1. Whip the cream with the sugar and the cordial.
2. Whisk the egg whites to soft peaks.
3. Fold in the whisked whites and chill for 2 hours.
`,
  },
];
