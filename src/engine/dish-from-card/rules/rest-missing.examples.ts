import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const restMissingExamples: readonly Example[] = [
  {
    card: `Rib of beef

Serves 8

2 kg rib of beef
20 g salt

Method

1. Heat the oven to 180°C.
2. Rub the beef with the salt.
3. Roast the beef for 2 hours, until the middle reads 55°C.
4. Carve the beef.
`,
    says: ["Roast the beef for 2 hours, until the middle reads 55°C"],
    fixed: `Rib of beef

Serves 8

2 kg rib of beef
20 g salt

Method

1. Heat the oven to 180°C.
2. Rub the beef with the salt.
3. Roast the beef for 2 hours, until the middle reads 55°C.
4. Rest the beef for 25 minutes.
5. Carve the beef.
`,
  },
];
