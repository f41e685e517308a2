import { normaliseName } from "../../src/engine/larder/normalise-name.ts";
import { regularPlural } from "../../src/engine/larder/plural.ts";
import { allergenGroups, dietFacts, hazardKinds, shelves } from "../../src/engine/model/food.ts";
import { among, type CsvRow, cell, list, number, oneOf } from "./csv.ts";
import { readSr28, type Sr28Food } from "./sr28.ts";

// US customary volumes in millilitres (UCUM, exact by definition of the US gallon).
const millilitresOf: Readonly<Record<string, number>> = {
  cup: 236.5882365,
  "fl oz": 29.5735295625,
  tablespoon: 14.78676478125,
  tbsp: 14.78676478125,
  teaspoon: 4.92892159375,
  tsp: 4.92892159375,
  quart: 946.352946,
};

const volumePattern = /^(\d*\.?\d+)\s*(cup|fl oz|tablespoon|tbsp|teaspoon|tsp|quart)s?\b/;

const volumeOf = (words: string): number | null => {
  const found = volumePattern.exec(words);
  const unit = found?.[2] === undefined ? undefined : millilitresOf[found[2]];
  return found === null || unit === undefined ? null : Number(found[1]) * unit;
};

const round = (value: number, places: number): number => Math.round(value * 10 ** places) / 10 ** places;

// "w1" is the first household weight of SR28, "120/cup" a weight for a US measure, "1.03" grams a millilitre.
const densityOf = (row: CsvRow, sr28: Sr28Food | null): number | null => {
  const text = cell(row, "density");
  if (text === "") return null;
  if (text === "w1" || text === "w2") {
    const household = sr28?.households[text === "w1" ? 0 : 1];
    const volume = household === undefined ? null : volumeOf(household.words);
    if (household === undefined || volume === null)
      throw new Error(`${cell(row, "id")}: SR28 has no volume at ${text}`);
    return round(household.grams / volume, 3);
  }
  const [weight, unit] = text.split("/");
  const volume = unit === undefined ? 1 : volumeOf(`1 ${unit}`);
  const value = Number(weight) / (volume ?? Number.NaN);
  if (!Number.isFinite(value)) throw new Error(`${cell(row, "id")}: density "${text}" is not understood`);
  return round(value, 3);
};

const nutrientNames = [
  "water",
  "kcal",
  "protein",
  "fat",
  "saturates",
  "carbohydrate",
  "sugars",
  "fibre",
  "sodium",
  "ash",
] as const;

/** "fat 48, kcal 450": figures for a food that SR28 lacks. */
const statedComposition = (text: string, id: string): ReadonlyMap<string, number> =>
  new Map(
    text
      .split(",")
      .map((part) => part.trim())
      .filter((part) => part !== "")
      .map((part): [string, number] => {
        const [name, value] = part.split(" ");
        if (!(nutrientNames as readonly string[]).includes(name ?? "") || !Number.isFinite(Number(value)))
          throw new Error(`${id}: composition "${part}" is not understood`);
        return [name ?? "", Number(value)];
      }),
  );

const nutrientsOf = (row: CsvRow, sr28: Sr28Food | null): string => {
  const stated = statedComposition(cell(row, "composition"), cell(row, "id"));
  const values = nutrientNames.map((name) => stated.get(name) ?? sr28?.[name] ?? null);
  return [...values, number(row, "alcohol")].map((value) => (value === null ? "" : String(value))).join(" ");
};

const piecesOf = (row: CsvRow): string =>
  list(row, "pieces")
    .map((piece) => {
      const found = /^(\D.*\D|\D) (\d+(?:\.\d+)?)$/.exec(piece);
      if (found === null) throw new Error(`${cell(row, "id")}: piece "${piece}" is not understood`);
      return `${found[1]}=${found[2]}`;
    })
    .join(";");

const allergensOf = (row: CsvRow): string =>
  cell(row, "allergens")
    .split(" ")
    .filter((code) => code !== "")
    .map((code) => {
      const found = /^([a-z]+)(?::([a-z-]+))?([~?]?)$/.exec(code);
      const group = (allergenGroups as readonly string[]).indexOf(found?.[1] ?? "");
      if (found === null || group < 0)
        throw new Error(
          `row ${cell(row, "id")}, column allergens: "${code}" is not one of ${allergenGroups.join(", ")}`,
        );
      return `${group},${found[2] ?? ""},${found[3] === "?" ? "check" : found[3] === "~" ? "typical" : "certain"}`;
    })
    .join(";");

const namesOf = (row: CsvRow): readonly string[] => {
  const name = cell(row, "name");
  return [name, cell(row, "plural") || regularPlural(name), cell(row, "us"), ...list(row, "aliases")].filter(
    (text) => text !== "",
  );
};

/**
 * Every way of writing each food, normalised. A name that is written in the table belongs to its row alone; a regular
 * plural made here gives way to a written name. Throws when two rows claim one written name.
 */
const searchNames = (rows: readonly CsvRow[]): ReadonlyMap<string, readonly string[]> => {
  const owner = new Map<string, string>();
  for (const row of rows) {
    const id = cell(row, "id");
    for (const key of namesOf(row).map(normaliseName)) {
      const other = owner.get(key);
      if (other !== undefined && other !== id) throw new Error(`"${key}" names both ${other} and ${id}`);
      owner.set(key, id);
    }
  }
  for (const row of rows)
    for (const name of namesOf(row)) {
      const key = normaliseName(regularPlural(name));
      if (!owner.has(key)) owner.set(key, cell(row, "id"));
    }
  const byFood = new Map<string, string[]>();
  for (const [key, id] of owner) byFood.set(id, [...(byFood.get(id) ?? []), key]);
  return byFood;
};

/** Text of src/engine/larder/tables/foods.ts: one tab-separated row for each food, in the order of data/foods.csv. */
export const buildFoods = (rows: readonly CsvRow[]): string => {
  const database = readSr28();
  const keys = searchNames(rows);
  const lines = rows.map((row) => {
    const id = cell(row, "id");
    const ndb = cell(row, "ndb");
    const sr28 = ndb === "" ? null : (database.get(ndb) ?? null);
    if (ndb !== "" && sr28 === null) throw new Error(`${id}: SR28 has no food ${ndb}`);
    const name = cell(row, "name");
    return [
      id,
      name,
      cell(row, "plural") || regularPlural(name),
      cell(row, "us"),
      list(row, "aliases").join(";"),
      oneOf(row, "shelf", shelves),
      ndb,
      nutrientsOf(row, sr28),
      densityOf(row, sr28) ?? "",
      piecesOf(row),
      number(row, "trim") ?? 1,
      allergensOf(row),
      among(row, "diet", dietFacts).join(" "),
      among(row, "hazards", hazardKinds).join(" "),
      number(row, "fridge") ?? "",
      list(row, "madeOf").join(";"),
      cell(row, "note"),
      cell(row, "source"),
      (keys.get(id) ?? []).join(";"),
    ].join("\t");
  });
  return [
    "// generated from data/foods.csv by scripts/build-tables.ts",
    "/** Tab-separated rows; the columns are read in ../food-from-row.ts. */",
    "export const foodRows: readonly string[] = [",
    ...lines.map((line) => `  ${JSON.stringify(line)},`),
    "];",
    "",
  ].join("\n");
};
