import type { Finding } from "../findings/finding.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Prep } from "../model/prep.ts";

/** The work of the menu, as tasks with segments, stations and lags. */
export const prepFromMenu = (menu: Menu): Outcome<Prep, Finding> => ({
  value: {
    tasks: [],
    lags: [],
    courses: [],
    holds: [],
    crew: [],
    ovens: [],
    resources: [],
    attention: { capacity: 4, hands: 3, mind: 1 },
    kitchen: menu.sitting.kitchen,
  },
  findings: [],
});
