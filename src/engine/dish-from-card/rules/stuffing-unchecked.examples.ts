import type { Example } from "./rule.ts";

/** Cards that break the rule, and the same cards put right. */
export const stuffingUncheckedExamples: readonly Example[] = [
  {
    card: `Stuffed roast chicken

Serves 4

1 whole chicken, about 1.6 kg
100 g breadcrumbs
1 onion, finely chopped
40 g butter

Method

1. Heat the oven to 190°C.
2. Fry the onion in the butter for 8 minutes and stir in the breadcrumbs.
3. Spoon the stuffing into the cavity and roast the chicken for 1 hour 40 minutes, until the thickest part of the thigh reads 75°C.
4. Rest for 15 minutes.
`,
    says: ["roast the chicken for 1 hour 40 minutes, until the thickest part of the thigh reads 75°C"],
    fixed: `Stuffed roast chicken

Serves 4

1 whole chicken, about 1.6 kg
100 g breadcrumbs
1 onion, finely chopped
40 g butter

Method

1. Heat the oven to 190°C.
2. Fry the onion in the butter for 8 minutes and stir in the breadcrumbs.
3. Spoon the stuffing into the cavity and roast the chicken for 1 hour 40 minutes, until the thickest part of the thigh and the middle of the stuffing read 75°C.
4. Rest for 15 minutes.
`,
  },
];
