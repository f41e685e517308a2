import { combineFindings } from "../findings/combine.ts";
import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Dish } from "../model/dish.ts";
import type { Batches, Menu, MenuDish } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Sitting } from "../model/sitting.ts";
import { adjustAmounts } from "./adjust-amounts.ts";
import { componentAdjuster } from "./adjust-components.ts";
import { chooseVessels } from "./choose-vessel.ts";
import { findComponents } from "./components.ts";
import { countBatches } from "./count-batches.ts";
import { lineBook } from "./dish-lines.ts";
import { dishPortions } from "./dish-portions.ts";
import { dishFinder } from "./find-dish.ts";
import { guestNeeds, withKnownNeeds } from "./guest-needs.ts";
import { kitchenWork } from "./kitchen-work.ts";
import { makeVersions, type VersionLines } from "./make-versions.ts";

/**
 * Portions every dish of the sitting for its covers and guests: which versions are made, how much of each, what other
 * cards they use, and how often a pan must be filled. Amounts keep their range and are not rounded; portions are.
 */
export const menuFromDishes = (sitting: Sitting, dishes: readonly Dish[]): Outcome<Menu, Finding> => {
  const finder = dishFinder(dishes);
  const book = lineBook(finder, sitting.region);
  const guests = guestNeeds(sitting);
  const findings: Finding[] = [...guests.findings, ...countFindings(sitting)];
  const served: (Omit<MenuDish, "versions"> & { readonly versions: readonly VersionLines[] })[] = [];

  sitting.courses.forEach((course, c) => {
    course.dishes.forEach((id, d) => {
      const dish = finder.byId(id);
      if (dish === null) {
        const facts = { dish: id, near: finder.near(id) };
        const path = `courses/${c}/dishes/${d}`;
        findings.push(makeFinding("dish-unknown", sitting.source, nowhere, facts, { path }));
        return;
      }
      const yields = dishPortions(dish);
      const made = makeVersions(dish, yields.value, sitting, guests.value, book, finder);
      const works = made.versions.map(({ version }) => ({
        id: version.id,
        work: kitchenWork(dish, version.factor, made.adjustments, sitting.kitchen),
      }));
      const batches = works.flatMap(({ id: version, work }) => countBatches(work, version));
      const vessels = works.flatMap(({ id: version, work }) => chooseVessels(work, version));
      findings.push(...yields.findings, ...made.findings, ...batchFindings(dish, batches));
      if (made.versions.length === 0) {
        const path = `courses/${c}/dishes/${d}`;
        findings.push(
          makeFinding("dish-for-nobody", sitting.source, nowhere, { title: dish.title }, { path }),
        );
      }
      served.push({ dish, course: c, versions: made.versions, batches, vessels, unserved: made.unserved });
    });
  });

  const found = findComponents(served, book);
  const shared = componentAdjuster(found, sitting.kitchen);
  findings.push(...shared.findings);
  const components = found.map((component) => {
    const { dish, factor } = component;
    const work = kitchenWork(dish, factor, adjustAmounts(dish, factor, sitting.kitchen), sitting.kitchen);
    const batches = countBatches(work, "as-written");
    findings.push(...batchFindings(component.dish, batches));
    const vessels = chooseVessels(work, "as-written");
    const ingredients = shared.adjust(component.ingredients, component.dish.source);
    return { ...component, ingredients, batches, vessels };
  });
  return {
    value: {
      sitting: withKnownNeeds(sitting),
      dishes: served.map((dish) => ({
        ...dish,
        versions: dish.versions.map(({ version }) => ({
          ...version,
          ingredients: shared.adjust(version.ingredients, null),
        })),
      })),
      components,
      spare: sitting.spare,
    },
    findings: combineFindings(findings, book.findings()),
  };
};

// What is said of the sitting has its place by the path.
const nowhere = { start: 0, end: 0 };

/** What does not add up in the sitting itself. */
const countFindings = (sitting: Sitting): readonly Finding[] => {
  const say = { guests: sitting.guests.length, covers: sitting.covers };
  const empty = sitting.courses.flatMap((course, c) =>
    course.dishes.length > 0
      ? []
      : [
          makeFinding(
            "course-empty",
            sitting.source,
            nowhere,
            { course: course.name },
            { path: `courses/${c}` },
          ),
        ],
  );
  return say.guests > say.covers
    ? [makeFinding("guests-beyond-covers", sitting.source, nowhere, say, { path: "covers" }), ...empty]
    : empty;
};

const batchFindings = (dish: Dish, batches: readonly Batches[]): readonly Finding[] =>
  batches.flatMap(({ action: id, batches: n, because }) => {
    const action = dish.steps.flatMap((s) => s.actions).find((a) => a.id === id);
    if (action === undefined) return [];
    return [
      makeFinding("batches-needed", dish.source, action.span, { verb: action.verb, batches: n, because }),
    ];
  });
