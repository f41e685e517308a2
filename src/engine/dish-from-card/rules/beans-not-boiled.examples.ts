import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const beansNotBoiledExamples: readonly Example[] = [
  {
    card: `Bean pot

Serves 6

400 g dried kidney beans
1 litre water
1 onion, chopped

Method

1. Put the kidney beans, water and onion in a slow cooker and cook for 6 hours.
`,
    says: ["400 g dried kidney beans"],
    fixed: `Bean pot

Serves 6

400 g dried kidney beans
1 litre water
1 onion, chopped

Method

1. Boil the kidney beans in the water for 30 minutes.
2. Add the onion and simmer for 1 hour.
`,
  },
];
