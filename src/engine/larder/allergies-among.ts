import type { Measured, Version } from "../model/menu.ts";
import type { Guest, NeedId } from "../model/sitting.ts";
import { againstNeed } from "./against-need.ts";
import { foodById } from "./foods.ts";
import { needById } from "./needs.ts";

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

/** True when the food holds, certainly or typically, what the need forbids. */
export const standsAgainst = (measured: Measured, id: NeedId): boolean => {
  const food = measured.food === null ? null : foodById(measured.food);
  const need = needById(id);
  const grade = food === null || need === null ? null : againstNeed(food, need);
  return grade === "certain" || grade === "typical";
};
