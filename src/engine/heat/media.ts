import type { Estimate } from "../measure/estimate.ts";
import { type Transfer, transfer } from "../measure/heat-units.ts";

/** What is around a food that is heated or cooled. */
export const media = [
  "still-air",
  "fridge",
  "walk-in",
  "freezer",
  "blast-chiller",
  "static-oven",
  "fan-oven",
  "water-bath",
  "ice-bath",
  "running-water",
  "boiling-water",
  "deep-fat",
  "steam",
] as const;
/** One of the media. */
export type Medium = (typeof media)[number];

type Row = { readonly transfer: Estimate<Transfer>; readonly source: string };

const row = (low: number, likely: number, high: number, source: string): Row => ({
  transfer: { low: transfer(low), likely: transfer(likely), high: transfer(high) },
  source,
});

const practice = "common practice, no source";

/** Heat-transfer coefficients at a food's surface, radiation and the usual evaporation included. */
const rows: { readonly [M in Medium]: Row } = {
  "still-air": row(5, 10, 25, "Çengel, Heat and Mass Transfer: gases, natural convection 2 to 25; Berk: 10"),
  fridge: row(5, 8, 10, "textbook apple problems: 5 to 8 in a still fridge"),
  "walk-in": row(
    5,
    10,
    20,
    "measured on ham in a walk-in cooler (UNL RURALS 2006): 5.1 to 9.1, 5 to 20 expected",
  ),
  freezer: row(5, 8, 12, practice),
  "blast-chiller": row(20, 30, 50, `${practice}: air at 3 to 6 m/s`),
  "static-oven": row(10, 15, 20, practice),
  "fan-oven": row(15, 25, 48, `Baik 1999: 20 to 48 in a tunnel oven; domestic 15 to 30 ${practice}`),
  "water-bath": row(80, 95, 150, "Baldwin: 95 in a circulated bath, from memory"),
  "ice-bath": row(100, 120, 300, `Çengel 4-169: 120, stirred; 100 to 300 ${practice}`),
  "running-water": row(100, 200, 400, practice),
  "boiling-water": row(800, 1200, 1400, "Çengel and others, egg problems: 800 to 1400"),
  "deep-fat": row(200, 300, 600, practice),
  steam: row(2500, 5000, 20000, "Çengel: condensing steam 2500 to 100 000; Berk: 20 000"),
};

/** The heat-transfer coefficient of a medium: low, likely, high. */
export const transferOf = (medium: Medium): Estimate<Transfer> => rows[medium].transfer;

/** Where the coefficient of a medium comes from. */
export const transferSource = (medium: Medium): string => rows[medium].source;
