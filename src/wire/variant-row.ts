import { type Evening, weighPlan } from "#engine/index.ts";

/** One variant of a sitting in figures: minutes, shares from 0 to 1, minor units of the currency. */
export type VariantRow = {
  readonly name: string;
  readonly covers: number;
  readonly lateMinutes: number;
  readonly unplaced: number;
  /** Of the least sure course; null when none lands whole. */
  readonly withinFive: number | null;
  readonly busiest: { readonly from: number; readonly handsMinutes: number } | null;
  readonly handsMinutes: number;
  readonly perCover: number;
  readonly purchaseTotal: number;
  readonly currency: string;
  readonly date: string;
};

/** What variants are compared by, of one evening. */
export const variantRow = (name: string, evening: Evening): VariantRow => {
  const { risk, load } = weighPlan(evening);
  return {
    name,
    covers: evening.menu.sitting.covers,
    lateMinutes: evening.plan.courses.reduce((sum, course) => sum + course.lateMinutes, 0),
    unplaced: evening.plan.unplaced.length,
    withinFive:
      risk.courses.length === 0 || evening.plan.unplaced.length > 0
        ? null
        : Math.min(...risk.courses.map((course) => course.withinFive)),
    busiest: load.busiest,
    handsMinutes: load.handsMinutes,
    perCover: evening.cost.perCover,
    purchaseTotal: evening.purchase.total,
    currency: evening.cost.currency,
    date: evening.menu.sitting.date,
  };
};
