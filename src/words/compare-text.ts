import type { VariantRow } from "#wire/variant-row.ts";
import { momentText } from "./clock.ts";
import { moneyText } from "./money-text.ts";
import { countText } from "./number-text.ts";
import { durationText } from "./quantity-text.ts";
import { chanceText } from "./risk-text.ts";

/** Heads of the columns that variants are compared in; the first column, of names, has none. */
export const compareHeadings = [
  "covers",
  "late",
  "least sure",
  "busiest hour",
  "hands-on",
  "per cover",
  "purchase",
] as const;

/** The cells of one variant, in the order of the heads. */
export const compareCells = (row: VariantRow): readonly string[] => [
  String(row.covers),
  row.unplaced > 0
    ? `${countText(row.unplaced, "task", "tasks")} without a place`
    : row.lateMinutes > 0
      ? durationText(row.lateMinutes)
      : "on time",
  row.withinFive === null ? "–" : chanceText(row.withinFive),
  row.busiest === null
    ? "–"
    : `${momentText(row.date, row.busiest.from)}, ${durationText(row.busiest.handsMinutes)}`,
  durationText(row.handsMinutes),
  moneyText(row.perCover, row.currency),
  moneyText(row.purchaseTotal, row.currency),
];
