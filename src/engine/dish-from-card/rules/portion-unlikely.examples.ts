import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const portionUnlikelyExamples: readonly Example[] = [
  {
    card: `Beef stew

Serves 1

2 kg stewing beef, diced
500 g onions, sliced
1 litre beef stock

Method

1. Brown the beef and onions for 10 minutes.
2. Add the stock and simmer for 2 hours, until tender.
`,
    says: ["Serves 1"],
    fixed: `Beef stew

Serves 10

2 kg stewing beef, diced
500 g onions, sliced
1 litre beef stock

Method

1. Brown the beef and onions for 10 minutes.
2. Add the stock and simmer for 2 hours, until tender.
`,
  },
];
