import { celsius, minutes } from "../../src/engine/measure/units.ts";
import { hazardKinds } from "../../src/engine/model/food.ts";
import type { Limit, LimitCase } from "../../src/engine/model/limit.ts";
import { limitQuantities } from "../../src/engine/model/safety.ts";
import { regions } from "../../src/engine/model/sitting.ts";
import { among, type CsvRow, cell, number, oneOf } from "./csv.ts";

const cases: readonly LimitCase[] = [
  ...hazardKinds,
  "any",
  "whole-roast",
  "room-made",
  "egg-to-order",
  "sealed-pack",
];
const minutesOf: Readonly<Record<string, number>> = { s: 1 / 60, min: 1, h: 60, d: 1440 };

// "15s", "2min", "4h", "7d"; empty for none.
const timeOf = (row: CsvRow): number | null => {
  const text = cell(row, "time");
  if (text === "") return null;
  const found = /^(\d+(?:\.\d+)?)(s|min|h|d)$/.exec(text);
  const unit = minutesOf[found?.[2] ?? ""];
  if (found === null || unit === undefined)
    throw new Error(`${cell(row, "id")}: time "${text}" is not understood`);
  return Number(found[1]) * unit;
};

const yes = (row: CsvRow, column: string): boolean => oneOf(row, column, ["yes", ""]) === "yes";

const limitFrom = (row: CsvRow): Limit => {
  const heat = number(row, "celsius");
  const time = timeOf(row);
  const from = number(row, "from");
  return {
    id: cell(row, "id"),
    region: oneOf(row, "region", regions),
    quantity: oneOf(row, "quantity", limitQuantities),
    comparator: oneOf(row, "comparator", ["at-least", "at-most"]),
    celsius: heat === null ? null : celsius(heat),
    minutes: time === null ? null : minutes(time),
    under: yes(row, "under"),
    from: from === null ? null : celsius(from),
    applies: among(row, "applies", cases),
    main: yes(row, "main"),
    where: cell(row, "where"),
    source: cell(row, "source"),
  };
};

/** Text of src/engine/larder/tables/limits.ts: the rows of data/limits.csv, each checked. */
export const buildLimits = (rows: readonly CsvRow[]): string =>
  [
    "// generated from data/limits.csv by scripts/build-tables.ts",
    'import type { Celsius, Minutes } from "../../measure/units.ts";',
    'import type { Limit } from "../../model/limit.ts";',
    "",
    'type Row = Omit<Limit, "celsius" | "minutes" | "from"> & {',
    "  readonly celsius: number | null;",
    "  readonly minutes: number | null;",
    "  readonly from: number | null;",
    "};",
    "",
    "const rows: readonly Row[] = [",
    ...rows.map((row) => `  ${JSON.stringify(limitFrom(row))},`),
    "];",
    "",
    "export const limitRows: readonly Limit[] = rows.map((row) => ({",
    "  ...row,",
    "  celsius: row.celsius as Celsius | null,",
    "  minutes: row.minutes as Minutes | null,",
    "  from: row.from as Celsius | null,",
    "}));",
    "",
  ].join("\n");
