import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const hotInFridgeExamples: readonly Example[] = [
  {
    card: `Brown hen stock

Makes 2 litres

2 kg chicken bones
2 onions, halved
3 litres water

Method

1. Put the bones, the onions and the water in a pot, bring to the boil and simmer for 3 hours.
2. Strain, and put the pot straight into the fridge while hot.
`,
    says: ["straight into the fridge while hot"],
    fixed: `Brown hen stock

Makes 2 litres

2 kg chicken bones
2 onions, halved
3 litres water

Method

1. Put the bones, the onions and the water in a pot, bring to the boil and simmer for 3 hours.
2. Strain, and cool it in iced water within 90 minutes, then chill.
`,
  },
];
