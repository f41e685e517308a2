import type { Finding } from "../findings/finding.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import type { SafetySheet } from "../model/safety.ts";

/** The hazards of the menu and its plan, with the limits that rule books set for them. */
export const safetyFromPlan = (menu: Menu, _prep: Prep, _plan: Plan): Outcome<SafetySheet, Finding> => ({
  value: { points: [], region: menu.sitting.region },
  findings: [],
});
