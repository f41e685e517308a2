import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const keptTooLongExamples: readonly Example[] = [
  {
    card: `Rice with peas

Serves 4

300 g long grain rice
200 g peas
20 g butter

Method

1. Boil the rice in plenty of water for 12 minutes and drain it.
2. Stir in the peas and the butter.

Keeping

Spread out and cooled within the hour, it keeps for 4 days in the fridge.
`,
    says: ["4 days"],
    fixed: `Rice with peas

Serves 4

300 g long grain rice
200 g peas
20 g butter

Method

1. Boil the rice in plenty of water for 12 minutes and drain it.
2. Stir in the peas and the butter.

Keeping

Spread out and cooled within the hour, it keeps for 1 day in the fridge.
`,
  },
  {
    card: `Light fish stock

Makes 1 litre

1 kg white fish bones
1 onion, sliced
1.2 litres water

Method

1. Bring everything to the boil, simmer for 20 minutes and strain.
2. Cool it in iced water within an hour.

Keeping

Keeps a week in the fridge.
`,
    says: ["a week"],
    fixed: `Light fish stock

Makes 1 litre

1 kg white fish bones
1 onion, sliced
1.2 litres water

Method

1. Bring everything to the boil, simmer for 20 minutes and strain.
2. Cool it in iced water within an hour.

Keeping

Keeps 2 days in the fridge.
`,
  },
  {
    card: `Vanilla custard

Serves 6

500 ml whole milk
5 egg yolks
80 g caster sugar

Method

1. Heat the milk. Whisk the yolks with the sugar and pour on the milk.
2. Stir over a low heat for 8 minutes to 82°C. Cool over ice and chill.

Keeping

Keeps 8 days in the fridge.
`,
    says: ["8 days"],
    fixed: `Vanilla custard

Serves 6

500 ml whole milk
5 egg yolks
80 g caster sugar

Method

1. Heat the milk. Whisk the yolks with the sugar and pour on the milk.
2. Stir over a low heat for 8 minutes to 82°C. Cool over ice and chill.

Keeping

Keeps 5 days in the fridge.
`,
  },
];
