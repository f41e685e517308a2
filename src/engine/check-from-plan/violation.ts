import { moment } from "../measure/units.ts";
import type { Violation } from "../model/plan.ts";

/** A breach of one rule, at a moment, by some tasks. The detail holds figures and names, no sentence. */
export const violation = (
  rule: Violation["rule"],
  tasks: readonly string[],
  at: number,
  detail: string,
): Violation => ({ rule, tasks, at: moment(at), detail });
