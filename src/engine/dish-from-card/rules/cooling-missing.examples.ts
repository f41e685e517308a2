import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const coolingMissingExamples: readonly Example[] = [
  {
    card: `Rice for a salad

Serves 10

500 g long grain rice
2 litres water

Method

1. Boil the rice in the water for 12 minutes and drain.
2. Put it in the fridge overnight.
`,
    says: ["Put it in the fridge overnight"],
    fixed: `Rice for a salad

Serves 10

500 g long grain rice
2 litres water

Method

1. Boil the rice in the water for 12 minutes and drain.
2. Cool quickly on shallow trays, within an hour, and put it in the fridge overnight.
`,
  },
  {
    card: `Shoulder under a lid

Serves 6

1.2 kg lamb shoulder
300 ml water

Method

1. Roast the lamb with the water at 160 °C for 3 hours.
2. Meanwhile, chill the lid in the fridge for half an hour.
3. Pull the lamb and chill it.
`,
    says: ["chill it"],
    fixed: `Shoulder under a lid

Serves 6

1.2 kg lamb shoulder
300 ml water

Method

1. Roast the lamb with the water at 160 °C for 3 hours.
2. Meanwhile, chill the lid in the fridge for half an hour.
3. Pull the lamb and eat it at once.
`,
  },
];
