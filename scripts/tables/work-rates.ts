import { ratePers } from "../../src/engine/model/food.ts";
import { type CsvRow, cell, number, oneOf, readTable } from "./csv.ts";

const idsOf = (table: string): readonly string[] => readTable(table).map((row) => cell(row, "id"));

/** Text of src/engine/larder/tables/work-rates.ts: the rows of data/work-rates.csv. Throws for a food or a technique that no table has. */
export const buildWorkRates = (rows: readonly CsvRow[]): string => {
  const foods = idsOf("foods.csv");
  const techniques = idsOf("techniques.csv");
  const lines = rows.map((row) => {
    const known = (column: string): number => {
      const value = number(row, column);
      if (value === null || value <= 0)
        throw new Error(`row ${cell(row, "id")}, column ${column}: a number above 0 is wanted`);
      return value;
    };
    const minutes = [known("low"), known("likely"), known("high")] as const;
    if (minutes[0] > minutes[1] || minutes[1] > minutes[2])
      throw new Error(`row ${cell(row, "id")}: minutes are not in order`);
    return JSON.stringify([
      oneOf(row, "work", techniques),
      oneOf(row, "food", foods),
      oneOf(row, "per", ratePers),
      ...minutes,
    ]);
  });
  return [
    "// generated from data/work-rates.csv by scripts/build-tables.ts",
    'import type { RatePer } from "../../model/food.ts";',
    "",
    "/** Technique, food, what it is counted by, and least, likely and most minutes of one. */",
    "export const workRateRows: readonly (readonly [string, string, RatePer, number, number, number])[] = [",
    ...lines.map((line) => `  ${line},`),
    "];",
    "",
  ].join("\n");
};
