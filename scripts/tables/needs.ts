import { allergenGroups, dietFacts, hazardKinds } from "../../src/engine/model/food.ts";
import type { Need } from "../../src/engine/model/need.ts";
import { type CsvRow, cell, list, readTable } from "./csv.ts";

// Space-separated names out of a closed list; throws for a name that is not in it.
const among = <T extends string>(row: CsvRow, column: string, known: readonly T[]): readonly T[] =>
  cell(row, column)
    .split(" ")
    .filter((name) => name !== "")
    .map((name) => {
      const found = known.find((k) => k === name);
      if (found === undefined) throw new Error(`${cell(row, "id")}: "${name}" in ${column} is not known`);
      return found;
    });

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
export const buildNeeds = (): string => {
  const foodIds = readTable("foods.csv").map((row) => cell(row, "id"));
  const needs = readTable("needs.csv").map((row) => needFrom(row, foodIds));
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
