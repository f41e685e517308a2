import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const techniqueUnknownExamples: readonly Example[] = [
  {
    card: `Cold cucumber

Serves 4

1 cucumber
1 tsp salt

Method

1. Frobble the cucumber.
2. Add the salt and leave for 20 minutes.
`,
    says: ["Frobble"],
    fixed: `Cold cucumber

Serves 4

1 cucumber
1 tsp salt

Method

1. Slice the cucumber.
2. Add the salt and leave for 20 minutes.
`,
  },
];
