import { type DeclarationFacts, declarationSeverity } from "./declaration-facts.ts";
import { type MenuFacts, menuSeverity } from "./menu-facts.ts";
import { type PlanFacts, planSeverity } from "./plan-facts.ts";
import { type ReadingFacts, readingSeverity } from "./reading-facts.ts";
import type { Severity } from "./severity.ts";

/** Every finding of the house and its facts. A code is never used for two things. */
export type FactsOf = ReadingFacts & MenuFacts & DeclarationFacts & PlanFacts;

/** The name of a finding, kebab-case: what is wrong, not what to do. */
export type Code = keyof FactsOf;

/** How grave each finding is. */
export const severityOf: { readonly [C in Code]: Severity } = {
  ...readingSeverity,
  ...menuSeverity,
  ...declarationSeverity,
  ...planSeverity,
};

/** All codes, in the order of the register. */
export const codes = Object.keys(severityOf) as readonly Code[];
