import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { cell, projectRoot, readTable } from "../scripts/tables/csv.ts";
import { tables } from "../scripts/tables/list.ts";
import { readSr28 } from "../scripts/tables/sr28.ts";

const csvFiles = readdirSync(`${projectRoot}data`).filter((file) => file.endsWith(".csv"));

describe("generated tables", () => {
  test.each(tables.map((table) => [table.name, table] as const))(
    "%s is what its data give",
    (name, table) => {
      const committed = readFileSync(`${projectRoot}src/engine/larder/tables/${name}.ts`, "utf8");
      expect(
        committed === table.build(readTable(`${name}.csv`)),
        `run npm run tables: ${name} is out of date`,
      ).toBe(true);
    },
  );
});

describe("a word that a table does not know is refused, with its row and column", () => {
  test.each([
    ["foods", "shelf", "cellar"],
    ["foods", "diet", "meaty"],
    ["foods", "hazards", "raw-eggs"],
    ["foods", "allergens", "dairy"],
    ["measures", "kind", "heap"],
    ["measures", "per", "oz"],
    ["measures", "region", "fr"],
    ["needs", "allergens", "nut"],
    ["needs", "diet", "meaty"],
    ["needs", "cautions", "raw-eggs"],
    ["needs", "asksFoods", "moonlight"],
    ["limits", "region", "fr"],
    ["limits", "quantity", "warm"],
    ["limits", "applies", "raw-eggs"],
    ["limits", "main", "no"],
    ["techniques", "station", "hob"],
    ["techniques", "attention", "some"],
    ["techniques", "heat", "warm"],
    ["techniques", "law", "per-gram"],
    ["techniques", "grows", "taller"],
    ["techniques", "mass", "grows"],
    ["techniques", "kills", "perhaps"],
  ])("%s.csv, %s: %s", (name, column, word) => {
    const [first, ...others] = readTable(`${name}.csv`);
    const id = cell(first!, "id");
    cell(first!, column);
    const build = () =>
      tables.find((table) => table.name === name)!.build([{ ...first!, [column]: word }, ...others]);
    expect(build).toThrow(`row ${id}, column ${column}: "${word}" is not one of `);
  });
});

describe("sources", () => {
  const sources = readFileSync(`${projectRoot}data/SOURCES.md`, "utf8");
  const listed = new Set([...sources.matchAll(/^\| ([a-z0-9-]+) +\|/gm)].map((found) => found[1]));

  test.each(csvFiles)("every row of %s names sources that SOURCES.md lists", (file) => {
    const lost = readTable(file).flatMap((row) => {
      // A later row of a table may narrow the one above it and leave the source to it.
      const ids = cell(row, "source")
        .split(";")
        .map((id) => id.trim())
        .filter((id) => id !== "");
      return ids.filter((id) => !listed.has(id));
    });
    expect([...new Set(lost)]).toEqual([]);
  });

  test("every food has one", () => {
    expect(readTable("foods.csv").filter((row) => cell(row, "source") === "")).toEqual([]);
  });
});

describe("foods against SR28", () => {
  const database = readSr28();

  test("the whole database is read", () => {
    expect(database.size).toBe(8789);
  });

  test("a food that says SR28 has a number, and one that says names only has none", () => {
    const wrong = readTable("foods.csv").filter((row) => {
      const numbered = database.has(cell(row, "ndb"));
      const source = cell(row, "source");
      if (source === "sr28" || source === "sr28-proxy") return !numbered;
      return numbered || (source === "names-only") !== (cell(row, "composition") === "");
    });
    expect(wrong.map((row) => cell(row, "id"))).toEqual([]);
  });

  test("a proxy is said to be one", () => {
    const silent = readTable("foods.csv").filter(
      (row) => cell(row, "source") === "sr28-proxy" && !cell(row, "note").includes("proxy"),
    );
    expect(silent.map((row) => cell(row, "id"))).toEqual([]);
  });
});
