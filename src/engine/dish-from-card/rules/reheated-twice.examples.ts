import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const reheatedTwiceExamples: readonly Example[] = [
  {
    card: `Lamb pot for two days

Serves 6

1 kg lamb shoulder, diced
2 onions, sliced
500 ml lamb stock

Method

1. Put the lamb, the onions and the stock in a casserole and simmer for 2 hours, until the meat is tender.
2. Cool it in a shallow tray within 90 minutes and chill.

Keeping

Keeps 2 days in the fridge and can be reheated more than once.
`,
    says: ["reheated more than once"],
    fixed: `Lamb pot for two days

Serves 6

1 kg lamb shoulder, diced
2 onions, sliced
500 ml lamb stock

Method

1. Put the lamb, the onions and the stock in a casserole and simmer for 2 hours, until the meat is tender.
2. Cool it in a shallow tray within 90 minutes and chill.

Keeping

Keeps 2 days in the fridge and can be reheated once.
`,
  },
];
