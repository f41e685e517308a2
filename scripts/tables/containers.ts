import { type CsvRow, cell, number } from "./csv.ts";

const required = (row: CsvRow, column: string): number => {
  const value = number(row, column);
  if (value === null || value <= 0)
    throw new Error(`row ${cell(row, "id")}, column ${column}: a number above 0 is wanted`);
  return value;
};

/** Text of src/engine/larder/tables/containers.ts: the rows of data/containers.csv, sizes in millimetres and litres. */
export const buildContainers = (rows: readonly CsvRow[]): string =>
  [
    "// generated from data/containers.csv by scripts/build-tables.ts",
    "/** Size, long and wide side and depth in millimetres, litres to the brim. */",
    "export const containerRows: readonly (readonly [string, number, number, number, number])[] = [",
    ...rows.map(
      (row) =>
        `  ${JSON.stringify([cell(row, "id"), ...["long", "wide", "depth", "litres"].map((column) => required(row, column))])},`,
    ),
    "];",
    "",
  ].join("\n");
