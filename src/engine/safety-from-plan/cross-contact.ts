import { againstNeed } from "../larder/against-need.ts";
import { foodById } from "../larder/foods.ts";
import { needById } from "../larder/needs.ts";
import type { Measured, Menu, MenuDish, Version } from "../model/menu.ts";
import type { Guest, NeedId } from "../model/sitting.ts";
import type { Pointed } from "./pointed.ts";

/**
 * Plates for guests with an allergy, made beside dishes of the same course that hold what they may not have: one point
 * a plate and allergy, with the names of what is about. A plate made without an ingredient is not thereby without
 * traces of it.
 */
export const crossContactPoints = (menu: Menu): readonly Pointed[] =>
  menu.dishes.flatMap((onMenu) => {
    const about = foodsOfCourse(menu, onMenu.course);
    return onMenu.versions.flatMap((version) =>
      allergiesAmong(menu.sitting.guests, version).flatMap(({ need, guests }) => {
        const names = [...new Set(about.filter((m) => standsAgainst(m, need)).map((m) => m.name))];
        return names.length === 0 ? [] : [pointOf(onMenu, names, guests)];
      }),
    );
  });

const pointOf = ({ dish }: MenuDish, names: readonly string[], guests: readonly string[]): Pointed => ({
  point: {
    hazard: "cross-contact",
    dish: dish.source,
    ingredient: null,
    task: null,
    span: dish.titleSpan,
    names,
    limits: [],
    guests,
    broken: false,
  },
  findings: [],
});

/** Each allergy among the guests of a version, with who has it. */
export const allergiesAmong = (
  guests: readonly Guest[],
  version: Version,
): readonly { readonly need: NeedId; readonly guests: readonly string[] }[] => {
  const served = guests.filter((guest) => version.guests.includes(guest.name));
  const allergies = new Set(served.flatMap((guest) => guest.needs.filter(isAllergy)));
  return [...allergies].map((need) => ({
    need,
    guests: served.filter((guest) => guest.needs.includes(need)).map((guest) => guest.name),
  }));
};

// A need that forbids a group of Annex II and no diet is an allergy; a diet is no matter of traces.
const isAllergy = (id: NeedId): boolean => {
  const need = needById(id);
  return (
    need !== null && need.allergens.length > 0 && !need.diet.includes("meat") && !need.diet.includes("pork")
  );
};

const foodsOfCourse = (menu: Menu, course: number): readonly Measured[] =>
  menu.dishes.filter((d) => d.course === course).flatMap((d) => d.versions.flatMap((v) => v.ingredients));

/** True when the food holds, certainly or typically, what the need forbids. */
export const standsAgainst = (measured: Measured, id: NeedId): boolean => {
  const food = measured.food === null ? null : foodById(measured.food);
  const need = needById(id);
  const grade = food === null || need === null ? null : againstNeed(food, need);
  return grade === "certain" || grade === "typical";
};
