import { allergiesAmong, standsAgainst } from "../larder/allergies-among.ts";
import type { Menu } from "../model/menu.ts";
import type { FreeFrom, Task } from "../model/prep.ts";

/**
 * The same work by hand on two versions of a dish, of which one is for a guest with an allergy and the other holds what
 * they may not have: theirs comes first, on clean kit. It is wished for and not forced; where it cannot be, it is told.
 */
export const freeFromPairs = (menu: Menu, tasks: readonly Task[]): readonly FreeFrom[] => {
  const pairs = new Map<string, FreeFrom>();
  for (const { dish, versions } of menu.dishes) {
    const work = tasks.filter(
      (task) =>
        task.dish === dish.source &&
        task.kind !== "plate" &&
        task.segments.some((segment) => segment.attention === "hands"),
    );
    const of = (version: string): readonly Task[] =>
      work.filter((task) => task.version.split(", ").includes(version));
    for (const own of versions)
      for (const { need } of allergiesAmong(menu.sitting.guests, own))
        for (const other of versions) {
          if (other.id === own.id || !other.ingredients.some((m) => standsAgainst(m, need))) continue;
          const theirs = of(other.id);
          for (const before of of(own.id)) {
            if (theirs.includes(before)) continue;
            for (const after of theirs)
              if (after.verb === before.verb && !of(own.id).includes(after))
                pairs.set(`${before.id} ${after.id}`, { before: before.id, after: after.id });
          }
        }
  }
  // Where each holds what the other's guest may not have, no order is right: what is asked for then is clean kit between.
  return [...pairs.values()].filter(({ before, after }) => !pairs.has(`${after} ${before}`));
};
