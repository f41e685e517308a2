import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const usedNotListedExamples: readonly Example[] = [
  {
    card: `Leek tart filling

Serves 6

500 g leeks, sliced
200 ml double cream
1 tsp salt

Method

1. Melt the butter in a pan and sweat the leeks for 12 minutes, till soft.
2. Stir in the cream and the salt and simmer for 5 minutes.
`,
    says: ["butter"],
    fixed: `Leek tart filling

Serves 6

500 g leeks, sliced
50 g butter
200 ml double cream
1 tsp salt

Method

1. Melt the butter in a pan and sweat the leeks for 12 minutes, till soft.
2. Stir in the cream and the salt and simmer for 5 minutes.
`,
  },
  {
    card: `Plain oatcakes

Makes 12

200 g oatmeal
60 g butter, melted
a pinch of salt

Method

1. Mix the oatmeal, butter and salt with enough boiling water to bind.
2. Roll out, cut into rounds and bake at 170°C for 25 minutes.
`,
    says: ["water"],
    fixed: `Plain oatcakes

Makes 12

200 g oatmeal
60 g butter, melted
a pinch of salt
80 ml boiling water

Method

1. Mix the oatmeal, butter and salt with the water.
2. Roll out, cut into rounds and bake at 170°C for 25 minutes.
`,
  },
  {
    card: `Spiced lentils

Serves 4

300 g red lentils
1 onion, chopped
1 tsp salt

Method

1. Fry the onion in 2 tbsp of ghee for 10 minutes, until golden.
2. Add the lentils, the salt and the coconut milk and simmer for 25 minutes.
`,
    says: ["ghee", "coconut milk"],
    fixed: `Spiced lentils

Serves 4

300 g red lentils
1 onion, chopped
1 tsp salt
2 tbsp ghee
400 ml coconut milk

Method

1. Fry the onion in 2 tbsp of ghee for 10 minutes, until golden.
2. Add the lentils, the salt and the coconut milk and simmer for 25 minutes.
`,
  },
];
