import { allergenGroups, dietFacts, hazardKinds } from "../../src/engine/model/food.ts";
import type { Need } from "../../src/engine/model/need.ts";
import { among, type CsvRow, cell, list, readTable } from "./csv.ts";

const needFrom = (row: CsvRow, foodIds: readonly string[]): Need => ({
  id: cell(row, "id"),
  name: cell(row, "name"),
  words: list(row, "words"),
  allergens: among(row, "allergens", allergenGroups),
  diet: among(row, "diet", dietFacts),
  cautions: among(row, "cautions", hazardKinds),
  asks: {
    allergens: among(row, "asksAllergens", allergenGroups),
    diet: among(row, "asksDiet", dietFacts),
    cautions: among(row, "asksCautions", hazardKinds),
    foods: among(row, "asksFoods", foodIds),
  },
  apart: among(row, "apart", dietFacts),
  note: cell(row, "note"),
  source: cell(row, "source"),
});

/** Text of src/engine/larder/tables/needs.ts: the rows of data/needs.csv, each name checked against its closed list. */
export const buildNeeds = (rows: readonly CsvRow[]): string => {
  const foodIds = readTable("foods.csv").map((row) => cell(row, "id"));
  const needs = rows.map((row) => needFrom(row, foodIds));
  return [
    "// generated from data/needs.csv by scripts/build-tables.ts",
    'import type { Need } from "../../model/need.ts";',
    "",
    "export const needRows: readonly Need[] = [",
    ...needs.map((need) => `  ${JSON.stringify(need)},`),
    "];",
    "",
  ].join("\n");
};
