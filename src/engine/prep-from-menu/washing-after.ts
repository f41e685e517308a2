import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Task } from "../model/prep.ts";
import type { Sitting } from "../model/sitting.ts";

/** What is told of washing-up after the service, with what a plan leaves for then besides. */
export const washingAfter = (
  findings: readonly Finding[],
  sitting: Sitting,
  left: readonly Task[],
): readonly Finding[] => {
  if (left.length === 0) return findings;
  const told = findings.find((finding) => finding.code === "washing-up-after");
  const facts = told?.code === "washing-up-after" ? told.facts : { vessels: 0, minutes: 0 };
  const vessels = left.reduce((sum, task) => sum + (task.amount?.value ?? 1), facts.vessels);
  const minutes = left.reduce((sum, task) => sum + (task.segments[0]?.minutes.likely ?? 0), facts.minutes);
  return [
    ...findings.filter((finding) => finding !== told),
    makeFinding(
      "washing-up-after",
      sitting.source,
      { start: 0, end: 0 },
      { vessels, minutes: Math.ceil(minutes) },
    ),
  ];
};
