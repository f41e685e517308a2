import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Violation } from "../model/plan.ts";

/** A breach as a finding on the sitting: the plan is wrong, and nobody should cook from it. */
export const brokenFindings = (violations: readonly Violation[]): readonly Finding[] =>
  violations.map(({ rule, tasks, detail }) => {
    const where = tasks.length > 0 ? `${detail} (${tasks.join(", ")})` : detail;
    return makeFinding("plan-broken", "sitting", { start: 0, end: 0 }, { rule, detail: where });
  });
