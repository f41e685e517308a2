import type { Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import type { Laid } from "./lay-out.ts";
import { violation } from "./violation.ts";

/** Burners, fridge litres, machines and pans are never in use beyond what there is. Ovens are looked at elsewhere. */
export const brokenResources = (prep: Prep, laid: readonly Laid[]): readonly Violation[] => {
  const capacity = new Map(prep.resources.map((resource) => [resource.id, resource.capacity]));
  const uses = laid.flatMap((l) =>
    l.segment.uses
      .filter((use) => use.resource !== "oven" && !prep.ovens.some((oven) => oven.id === use.resource))
      .map((use) => ({ ...l, resource: use.resource, amount: use.amount })),
  );
  return uses.flatMap((use) => {
    const there = uses.filter(
      (other) =>
        other.resource === use.resource && other.from <= use.from && (use.from < other.to || other === use),
    );
    const sum = there.reduce((total, other) => total + other.amount, 0);
    const most = capacity.get(use.resource) ?? 0;
    // Litres are fractions; a hair's breadth over is the arithmetic, not the fridge.
    if (sum <= most + 1e-6) return [];
    const ids = there.map((other) => other.task.id);
    return [violation("resource-over", ids, use.from, `${use.resource} ${sum} > ${most}`)];
  });
};
