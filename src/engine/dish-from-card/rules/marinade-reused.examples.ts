import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const marinadeReusedExamples: readonly Example[] = [
  {
    card: `Soy pork

Serves 4

600 g pork loin steaks
60 ml soy sauce
40 g honey

Method

1. Marinate the pork in the soy sauce and honey for 2 hours.
2. Grill the pork for 12 minutes, until the middle reads 75°C.
3. Drizzle over the marinade.
`,
    says: ["Drizzle over the marinade"],
    fixed: `Soy pork

Serves 4

600 g pork loin steaks
60 ml soy sauce
40 g honey

Method

1. Marinate the pork in the soy sauce and honey for 2 hours.
2. Grill the pork for 12 minutes, until the middle reads 75°C.
3. Boil the marinade for 3 minutes and drizzle it over.
`,
  },
];
