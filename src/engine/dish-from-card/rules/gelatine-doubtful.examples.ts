import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const gelatineDoubtfulExamples: readonly Example[] = [
  {
    card: `Set cream

Serves 6

600 ml double cream
60 g caster sugar
80 g powdered gelatine

Method

1. Warm the cream and sugar for 5 minutes, stir in the gelatine until it melts.
2. Pour into glasses and chill for 4 hours.
`,
    says: ["80 g powdered gelatine"],
    fixed: `Set cream

Serves 6

600 ml double cream
60 g caster sugar
8 g powdered gelatine

Method

1. Warm the cream and sugar for 5 minutes, stir in the gelatine until it melts.
2. Pour into glasses and chill for 4 hours.
`,
  },
];
