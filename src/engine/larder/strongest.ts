import type { AllergenGrade } from "../model/food.ts";

const order: readonly AllergenGrade[] = ["certain", "typical", "check"];

/** The strongest of some grades; null when there are none. */
export const strongest = (grades: readonly AllergenGrade[]): AllergenGrade | null =>
  order.find((grade) => grades.includes(grade)) ?? null;
