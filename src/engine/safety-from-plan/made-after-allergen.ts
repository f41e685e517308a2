import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { allergiesAmong, standsAgainst } from "../larder/allergies-among.ts";
import type { Menu, Version } from "../model/menu.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep, Task } from "../model/prep.ts";

/**
 * Where the plan does the same work first for a version that holds what a guest may not have, and then for that
 * guest's own: the sheet asks for the other order. One finding a version and allergy, at its first such task.
 */
export const madeAfterAllergen = (menu: Menu, prep: Prep, plan: Plan): readonly Finding[] => {
  const starts = new Map(plan.placed.map((placed) => [placed.task, placed.start]));
  const startOf = (task: Task): number => starts.get(task.id) ?? Number.POSITIVE_INFINITY;
  return menu.dishes.flatMap(({ dish, versions }) => {
    const work = prep.tasks
      .filter((task) => task.dish === dish.source && task.kind !== "plate" && starts.has(task.id))
      .filter((task) => task.segments.some((segment) => segment.attention === "hands"))
      .sort((a, b) => startOf(a) - startOf(b));
    const ofVersion = (version: Version): readonly Task[] =>
      work.filter((task) => task.version.split(", ").includes(version.id));
    return versions.flatMap((own) =>
      allergiesAmong(menu.sitting.guests, own).flatMap(({ need, guests }): readonly Finding[] => {
        for (const other of versions) {
          const held = other.ingredients.find((measured) => standsAgainst(measured, need));
          if (other.id === own.id || held === undefined) continue;
          const before = ofVersion(other);
          const late = ofVersion(own).find(
            (task) =>
              !before.includes(task) &&
              before.some((first) => first.verb === task.verb && startOf(first) < startOf(task)),
          );
          if (late === undefined) continue;
          // Where theirs holds what a guest of the other may not have, one of the two comes second in any order.
          const either = allergiesAmong(menu.sitting.guests, other).some((allergy) =>
            own.ingredients.some((measured) => standsAgainst(measured, allergy.need)),
          );
          const facts = {
            title: dish.title,
            guests: guests.join(", "),
            verb: late.verb,
            name: held.name,
            either: either ? "yes" : "no",
          } as const;
          return [makeFinding("made-after-allergen", dish.source, late.span ?? dish.titleSpan, facts)];
        }
        return [];
      }),
    );
  });
};
