import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const shellfishUncheckedExamples: readonly Example[] = [
  {
    card: `Cider mussels

Serves 4

1.5 kg mussels
200 ml dry cider

Method

1. Bring the cider to the boil.
2. Steam the mussels in it for 5 minutes.
`,
    says: ["Steam the mussels in it for 5 minutes"],
    fixed: `Cider mussels

Serves 4

1.5 kg mussels
200 ml dry cider

Method

1. Bring the cider to the boil.
2. Steam the mussels in it for 5 minutes and throw away any that stay shut.
`,
  },
];
