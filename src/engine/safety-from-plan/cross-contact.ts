import { againstNeed } from "../larder/against-need.ts";
import { foodById } from "../larder/foods.ts";
import { needById } from "../larder/needs.ts";
import type { Measured, Menu, MenuDish, Version } from "../model/menu.ts";
import type { NeedId } from "../model/sitting.ts";
import type { Pointed } from "./pointed.ts";

/**
 * Plates for guests with an allergy, made in a kitchen that also handles what they may not have: one point a plate,
 * with the names of what is about. A plate made without an ingredient is not thereby without traces of it.
 */
export const crossContactPoints = (menu: Menu): readonly Pointed[] =>
  menu.dishes.flatMap((onMenu) =>
    onMenu.versions.flatMap((version) => crossContactPoint(menu, onMenu, version)),
  );

const crossContactPoint = (menu: Menu, onMenu: MenuDish, version: Version): readonly Pointed[] => {
  const allergic = menu.sitting.guests.filter(
    (guest) => version.guests.includes(guest.name) && guest.needs.some(isAllergy),
  );
  const needed = new Set(allergic.flatMap((guest) => guest.needs.filter(isAllergy)));
  const names = [
    ...new Set(
      allFoods(menu)
        .filter((m) => standsAgainst(m, needed))
        .map((m) => m.name),
    ),
  ];
  if (allergic.length === 0 || names.length === 0) return [];
  return [
    {
      point: {
        hazard: "cross-contact",
        dish: onMenu.dish.source,
        ingredient: null,
        task: null,
        span: onMenu.dish.titleSpan,
        names,
        limits: [],
        guests: allergic.map((guest) => guest.name),
        broken: false,
      },
      findings: [],
    },
  ];
};

// A need that forbids a group of Annex II and no diet is an allergy; a diet is no matter of traces.
const isAllergy = (id: NeedId): boolean => {
  const need = needById(id);
  return (
    need !== null && need.allergens.length > 0 && !need.diet.includes("meat") && !need.diet.includes("pork")
  );
};

const allFoods = (menu: Menu): readonly Measured[] => [
  ...menu.dishes.flatMap((d) => d.versions.flatMap((v) => v.ingredients)),
  ...menu.components.flatMap((c) => c.ingredients),
];

const standsAgainst = (measured: Measured, needs: ReadonlySet<NeedId>): boolean => {
  const food = measured.food === null ? null : foodById(measured.food);
  if (food === null) return false;
  return [...needs].some((id) => {
    const need = needById(id);
    const grade = need === null ? null : againstNeed(food, need);
    return grade === "certain" || grade === "typical";
  });
};
