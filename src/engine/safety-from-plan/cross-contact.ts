import { allergiesAmong, standsAgainst } from "../larder/allergies-among.ts";
import type { Measured, Menu, MenuDish } from "../model/menu.ts";
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

const foodsOfCourse = (menu: Menu, course: number): readonly Measured[] =>
  menu.dishes.filter((d) => d.course === course).flatMap((d) => d.versions.flatMap((v) => v.ingredients));
