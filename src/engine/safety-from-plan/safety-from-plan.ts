import type { Finding } from "../findings/finding.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import type { SafetySheet } from "../model/safety.ts";
import { coolingPoints } from "./cooling.ts";
import { crossContactPoints } from "./cross-contact.ts";
import { foodPoints } from "./food-points.ts";
import { keepingPoints } from "./keeping.ts";
import { madeAfterAllergen } from "./made-after-allergen.ts";
import { noteOf, type Pointed } from "./pointed.ts";
import { reheatingPoints } from "./reheating.ts";
import { timelineOf } from "./timeline.ts";
import { hotWaitPoints } from "./waiting-hot.ts";

/**
 * The hazards of the menu and its plan, with the limits that rule books set for them. A point says what can go wrong
 * and what is usual; a sheet without points or breaches never says that food is safe.
 */
export const safetyFromPlan = (menu: Menu, prep: Prep, plan: Plan): Outcome<SafetySheet, Finding> => {
  const { region } = menu.sitting;
  const timeline = timelineOf(prep, plan);
  const note = noteOf(menu);
  const found: readonly Pointed[] = [
    ...foodPoints(menu),
    ...coolingPoints(timeline, note),
    ...hotWaitPoints(timeline, prep, note),
    ...keepingPoints(timeline, note),
    ...reheatingPoints(timeline, note),
    ...crossContactPoints(menu),
  ];
  return {
    value: { points: found.map((f) => f.point), region },
    findings: [...found.flatMap((f) => f.findings), ...madeAfterAllergen(menu, prep, plan)],
  };
};
